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
