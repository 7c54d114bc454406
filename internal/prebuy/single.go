package prebuy

import (
	"context"
	"errors"

	"trialfit/internal/manifest"
)

// single is a candidate judged by what depends on it alone.
type single struct {
	rules []ruled
	out   *Reason // in every region
	at    []*Reason
	wish  string
}

type singles struct {
	intent  []ruled
	chassis []single
	donors  []single
}

// alone decides what depends on the intent, each chassis and each donor alone.
func (j *jury) alone(ctx context.Context) (*singles, error) {
	out := &singles{chassis: make([]single, len(j.s.Chassis)), donors: make([]single, len(j.s.Donors))}
	var problems manifest.Problems
	one := func(c, d *Candidate, want origin) (single, error) {
		m, _, err := j.s.manifest(j.checker.Loader, c, d, nil)
		var faults manifest.Problems
		switch {
		case errors.As(err, &faults):
			problems = append(problems, faults...)
			return single{}, nil
		case err != nil:
			return single{}, err
		}
		b := j.subject(m)
		rules, err := j.decide(ctx, b, func(u *unit) bool { return u.origin == want })
		if err != nil {
			return single{}, err
		}
		x := single{rules: rules, at: make([]*Reason, len(j.chains))}
		out := 0
		for i := range j.chains {
			if x.at[i] = j.judgement(b, i, rules[i]).Out; x.at[i] != nil {
				x.at[i].Alone = alone(c, d)
				out++
			}
		}
		if out == len(j.chains) && out > 0 {
			x.out = x.at[0]
		}
		return x, nil
	}
	first, err := one(nil, nil, ofIntent)
	if err != nil {
		return nil, err
	}
	out.intent = first.rules
	for i, c := range j.s.Chassis {
		if out.chassis[i], err = one(c, nil, ofChassis); err != nil {
			return nil, err
		}
	}
	for i, d := range j.s.Donors {
		if out.donors[i], err = one(nil, d, ofDonor); err != nil {
			return nil, err
		}
		reason, wish := j.s.engine(d)
		if reason != nil && out.donors[i].out == nil {
			out.donors[i].out = reason
		}
		out.donors[i].wish = wish
	}
	if len(problems) > 0 {
		return nil, problems.Sorted()
	}
	return out, nil
}

func alone(c, d *Candidate) string {
	switch {
	case c != nil:
		return c.ID
	case d != nil:
		return d.ID
	}
	return ""
}
