package main

import (
	"context"
	"encoding/json"
	"fmt"
	"os"
	"strings"

	"trialfit/internal/check"
	"trialfit/internal/rulecase"
)

func main() {
	cases, err := rulecase.Load(os.DirFS("policies"))
	if err != nil {
		panic(err)
	}
	base, err := check.New(check.Options{})
	if err != nil {
		panic(err)
	}
	out := map[string]any{}
	alone := map[string]*check.Checker{}
	for _, c := range cases {
		want := false
		for _, p := range os.Args[1:] {
			want = want || strings.HasPrefix(c.Rule+"/", p)
		}
		if !want {
			continue
		}
		if alone[c.Rule] == nil {
			alone[c.Rule] = rulecase.Alone(base, c.Rule)
		}
		dir, _ := os.MkdirTemp("", "zz")
		r, err := c.Run(context.Background(), alone[c.Rule], dir)
		os.RemoveAll(dir)
		if err != nil {
			out[c.Rule+"|"+c.Name] = []any{"ERROR " + fmt.Sprint(err)}
			continue
		}
		o, m := c.Found(r)
		var why []string
		for _, f := range r.Verdict.Rules[c.Rule].Findings {
			why = append(why, fmt.Sprint(f.Subject, " ", f.Outcome, " ", f.Reason, " ", f.Missing, f.Weak, " ", f.Value, " vs ", f.Limit))
		}
		out[c.Rule+"|"+c.Name] = []any{o, m, why}
	}
	b, _ := json.Marshal(out)
	fmt.Println(string(b))
}
