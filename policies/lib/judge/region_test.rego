package lib.judge_test

import data.lib.judge

test_in_region[name] if {
	some name, c in {
		"the country itself": {"chain": ["US"], "state": "yes"},
		"a state of it": {"chain": ["US", "US-CA"], "state": "yes"},
		"the other country": {"chain": ["CA"], "state": "yes"},
		"elsewhere": {"chain": ["GB"], "state": "no"},
		"not said": {"chain": [], "state": "unknown"},
	}
	doc := {"regions": [{"code": code} | some code in c.chain]}
	judge.in_region({"US", "CA"}) == {"state": c.state, "because": ["registration.region"]} with input as doc
}

test_when_zone[name] if {
	some name, c in {
		"as listed": {"zone": {"value": "El Paso"}, "state": "yes"},
		"a county": {"zone": {"value": "el paso County"}, "state": "yes"},
		"a city": {"zone": {"value": "City of Fairfax"}, "state": "yes"},
		"another": {"zone": {"value": "Brewster"}, "state": "no"},
		"not said": {"zone": {"missing": "registration.zone"}, "state": "unknown"},
		"none": {"zone": {"none": "registration.zone"}, "state": "unknown"},
	}
	judge.when_zone({"El Paso", "Fairfax"}) == {"state": c.state, "because": ["registration.zone"]} with input as {"build": {"registration": {"zone": c.zone}}}
}
