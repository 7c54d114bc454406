package prebuy_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/check"
	"trialfit/internal/prebuy"
)

func TestTry(t *testing.T) {
	c, err := check.New(check.Options{Today: "2026-11-25"})
	require.NoError(t, err)
	s, err := prebuy.Read("../../examples/shortlists/heated-wagon.shortlist.yaml", c.Book)
	require.NoError(t, err)
	r, err := prebuy.Run(t.Context(), s, c, nil)
	require.NoError(t, err)
	for _, x := range r.Ranked {
		fmt.Println(x.Rank, x.Shared, x.ID, x.Total.Print("USD"), x.Unproven(), x.Wishes)
		for _, h := range prebuy.Heads {
			fmt.Println("   ", h, x.Cost.Under(h).Print("USD"))
		}
		for _, tk := range x.Takes {
			fmt.Println("      ", tk.Need.ID, tk.By)
		}
		for _, j := range x.Regions {
			fmt.Printf("   %+v\n", j)
		}
	}
	for _, u := range r.Ruled {
		fmt.Printf("%+v\n", u)
	}
	for _, n := range r.Notes {
		fmt.Println(n)
	}
	for _, a := range r.Asks {
		fmt.Printf("ASK %.2f %s\n   %s [%s] %v\n   %v\n", a.Decides, a.Settles, a.Text, a.Tool, a.If, a.Paths)
	}
	for _, e := range r.Even {
		fmt.Println("EVEN", e.Text)
	}
	for _, o := range r.Offices {
		fmt.Println("OFFICE", o)
	}
}
