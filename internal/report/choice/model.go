// Package choice tells what a shortlist comes to: as text, JSON, Markdown and
// one page of HTML with a sheet to print.
package choice

import (
	"math/big"

	"trialfit/internal/prebuy"
	"trialfit/internal/quantity"
)

// page is what every form is written from: words and numbers, no shortlist.
type page struct {
	Name     string    `json:"name"`
	File     string    `json:"file"`
	Hold     string    `json:"hold"`
	Today    string    `json:"today"`
	Currency string    `json:"currency"`
	Regions  []string  `json:"regions"`
	Count    string    `json:"count"`
	First    string    `json:"answer"`
	Rows     []row     `json:"combinations"`
	Details  []detail  `json:"leading"`
	Ruled    []ruled   `json:"cannot_work"`
	Asks     []ask     `json:"ask_and_measure"`
	Offices  []office  `json:"ask_authority"`
	Even     []turn    `json:"break_even"`
	Blanks   []blank   `json:"little_known"`
	Notes    []note    `json:"findings"`
	Compared []string  `json:"how_compared"`
	Deferral string    `json:"deferral"`
	Bars     *barScale `json:"-"`
}

// money is a range of it; High is empty where it is open.
type money struct {
	Low  string `json:"low"`
	High string `json:"high,omitempty"`
	Text string `json:"text"`

	low, high float64
	open      bool
}

func moneyOf(r prebuy.Range, code string) money {
	m := money{Text: r.Print(code), open: r.OpenHigh}
	m.low, m.high = float(r.Low), float(r.High)
	m.Low = quantity.Canonical(m.low)
	if !r.OpenHigh {
		m.High = quantity.Canonical(m.high)
	}
	return m
}

func float(r *big.Rat) float64 {
	f, _ := r.Float64()
	return f
}

// row is one combination that may work.
type row struct {
	Rank    int       `json:"rank"`
	Shared  bool      `json:"shared"`
	ID      string    `json:"id"`
	Chassis string    `json:"chassis"`
	Donor   string    `json:"donor"`
	Cost    money     `json:"cost_to_finish"`
	Regions []verdic  `json:"regions"`
	Wishes  []string  `json:"not_known_to_be_met"`
	Margins []*margin `json:"-"`
}

// verdic is what the rules say in one region.
type verdic struct {
	Region    string   `json:"region"`
	Words     string   `json:"words"`
	NotMet    []string `json:"not_met"`
	Unproven  []string `json:"unproven"`
	Questions int      `json:"open_questions"`
}

type detail struct {
	ID      string     `json:"id"`
	Rank    int        `json:"rank"`
	Shared  bool       `json:"shared"`
	Costs   []cost     `json:"costs"`
	Total   money      `json:"cost_to_finish"`
	Takes   []group    `json:"takes"`
	Needs   []needed   `json:"needs"`
	Left    []leftover `json:"left_over"`
	Open    []string   `json:"unproven"`
	Margins []margin   `json:"margins"`
}

type cost struct {
	Head string `json:"head"`
	money
}

// group is what is taken from one source.
type group struct {
	From  string   `json:"from"`
	Parts []string `json:"parts"`
}

type needed struct {
	Need string `json:"need"`
	What string `json:"what"`
	By   string `json:"by"`
	From string `json:"from,omitempty"`
	Part string `json:"part,omitempty"`
}

type leftover struct {
	From  string `json:"from"`
	What  string `json:"what"`
	Value string `json:"value"`
}

// margin is a value against its limit, as shares of the limit.
type margin struct {
	Rule  string `json:"rule"`
	Title string `json:"title"`
	Found string `json:"found"`
	Need  string `json:"needed"`
	State string `json:"outcome"`

	low, high float64 // shares of the limit
	upper     bool
}

type ruled struct {
	Who    []string `json:"who"`
	Rule   string   `json:"rule,omitempty"`
	Reason string   `json:"reason"`
	Own    []string `json:"own_reasons,omitempty"` // of each of who, where they differ
	Source string   `json:"source,omitempty"`
	Where  string   `json:"where"`
	with   string
}

type ask struct {
	Way      string   `json:"way"`
	Of       string   `json:"of,omitempty"`
	Text     string   `json:"text"`
	Tool     string   `json:"tool"`
	Write    []string `json:"write_at"`
	Decides  string   `json:"decides"`
	Settles  string   `json:"settles"`
	Share    string   `json:"share"`
	If       []string `json:"if"`
	Concerns []string `json:"concerns"`
}

type office struct {
	Office   string   `json:"office"`
	Ask      string   `json:"ask"`
	Rule     string   `json:"rule"`
	Regions  []string `json:"regions"`
	Concerns []string `json:"concerns"`
}

type turn struct {
	Candidate string `json:"candidate"`
	Rises     bool   `json:"rises"`
	Never     bool   `json:"never"`
	At        *money `json:"price,omitempty"`
	Text      string `json:"text"`
}

type blank struct {
	Candidate string   `json:"candidate"`
	Words     string   `json:"words"`
	First     []string `json:"find_out_first"`
}

type note struct {
	Where string `json:"where"`
	Text  string `json:"text"`
}
