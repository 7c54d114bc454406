package thread

import (
	"fmt"
	"regexp"
	"slices"
	"strings"
)

// longest is the most characters a thread is written with.
const longest = 80

// spelling is one way to name a standard. A gender means that the words carry it.
type spelling struct{ words, standard, gender string }

// spellings puts longer phrases before the shorter ones they begin with.
var spellings = []spelling{
	{"jic 37 flare", JIC37, ""}, {"jic 37", JIC37, ""}, {"jic", JIC37, ""}, {"an", JIC37, ""},
	{"sae j 514", JIC37, ""}, {"37 flare", JIC37, ""},
	{"sae 45 flare", SAE45, ""}, {"sae 45", SAE45, ""}, {"sae j 512", SAE45, ""}, {"45 flare", SAE45, ""},
	{"sae o ring boss", ORB, ""}, {"o ring boss", ORB, ""}, {"sae orb", ORB, ""}, {"sae j 1926", ORB, ""}, {"orb", ORB, ""},
	{"iso 6149-1", ISO6149, ""}, {"iso 6149", ISO6149, ""},
	{"din 3852-1", Metric, ""}, {"din 3852", Metric, ""}, {"iso 9974-1", Metric, ""}, {"iso 9974", Metric, ""},
	{"metric", Metric, ""},
	{"nptf", NPTF, ""}, {"npsm", NPSM, ""}, {"npt", NPT, ""}, {"mnpt", NPT, External}, {"fnpt", NPT, Internal},
	{"g", G, ""}, {"bspp", G, ""}, {"bspt", bspt, ""}, {"bsp", bsp, ""},
	{"rc", Rc, Internal}, {"rp", Rp, Internal}, {"r", R, External},
	{"unf", UNF, ""}, {"un", UN, ""},
}

// Names that become a standard only once taper and gender are known.
const (
	bsp  = "BSP"
	bspt = "BSPT"
)

// genders are the words for the two genders.
var genders = map[string]string{"external": External, "male": External, "internal": Internal, "female": Internal}

// fillers are words that add nothing.
var fillers = []string{"in", "inch", "thread", "tpi"}

var decimalComma = regexp.MustCompile(`\d+,\d+`)

// draft collects what the words of one designation say.
type draft struct {
	standard string
	gender   string
	form     string   // "taper" or "parallel", "" if not said
	metric   bool     // an M stood before the size
	numbers  []string // what is left for the size
	unknown  string   // the first word that means nothing
}

// Parse reads a thread as a workshop writes it: "1/2 NPT external", "1/8-27 NPT male",
// "G1/4 female", "BSPT 1/8 male", "M14x1.5 external", "M10x1 taper external",
// "-6 JIC male", "9/16-18 ORB female". Male means external, female internal; R, Rc and
// Rp carry their gender. The error is one line that quotes the text and says what
// would be accepted.
func Parse(text string) (Thread, error) {
	if n := len([]rune(text)); n > longest {
		return Thread{}, fmt.Errorf("thread of %d characters; accepted: at most %d, like %q", n, longest, "1/2 NPT external")
	}
	t, err := parse(text)
	if err != nil {
		return Thread{}, fmt.Errorf("%q: %w", text, err)
	}
	return t, nil
}

func parse(text string) (Thread, error) {
	if comma := decimalComma.FindString(text); comma != "" {
		return Thread{}, fmt.Errorf("decimal comma; write %s", strings.Replace(comma, ",", ".", 1))
	}
	var d draft
	if err := d.read(lex(text)); err != nil {
		return Thread{}, err
	}
	if err := d.settleStandard(); err != nil {
		return Thread{}, err
	}
	t, err := sized(d.standard, strings.Join(d.numbers, "-"))
	if err != nil {
		return Thread{}, err
	}
	switch {
	case d.gender != "":
	case onlyGender(d.standard) != "":
		return Thread{}, fmt.Errorf("no gender; write %q", t.Name()+" "+onlyGender(d.standard))
	default:
		return Thread{}, fmt.Errorf("no gender; write %q (male) or %q (female)", t.Name()+" "+External, t.Name()+" "+Internal)
	}
	t.Gender, t.Text = d.gender, text
	return t, nil
}

// read sorts the tokens into standard, gender, form and size.
func (d *draft) read(tokens []string) error {
	for i := 0; i < len(tokens); {
		if s, n := spelled(tokens[i:]); n > 0 {
			if err := d.setStandard(s.standard); err != nil {
				return err
			}
			if err := d.setGender(s.gender); err != nil {
				return err
			}
			i += n
			continue
		}
		if err := d.word(tokens[i], tokens[i+1:]); err != nil {
			return err
		}
		i++
	}
	return nil
}

// spelled is the spelling that tokens begin with and how many of them it takes.
func spelled(tokens []string) (spelling, int) {
	for _, s := range spellings {
		words := strings.Fields(s.words)
		if len(words) <= len(tokens) && slices.Equal(words, tokens[:len(words)]) {
			return s, len(words)
		}
	}
	return spelling{}, 0
}

func (d *draft) word(word string, after []string) error {
	switch {
	case genders[word] != "":
		return d.setGender(genders[word])
	case word == "taper" || word == "tapered":
		return d.setForm("taper")
	case word == "parallel" || word == "straight":
		return d.setForm("parallel")
	case word == "m" && len(after) > 0 && isNumber(after[0]):
		d.metric = true
	case word == "x" && d.metric:
	case slices.Contains(fillers, word):
	case isNumber(word):
		d.numbers = append(d.numbers, d.trimmed(word))
	case d.unknown == "":
		d.unknown = word
	}
	return nil
}

// trimmed drops the hyphen that only joins a number to what stood before it: a
// leading one counts for the first number alone, where it makes a dash size.
func (d *draft) trimmed(number string) string {
	if len(d.numbers) > 0 {
		return strings.TrimLeft(number, "-")
	}
	return number
}

func (d *draft) setGender(gender string) error {
	if gender != "" && d.gender != "" && gender != d.gender {
		return d.bothGenders()
	}
	if gender != "" {
		d.gender = gender
	}
	return nil
}

func (d *draft) bothGenders() error {
	switch d.standard {
	case R:
		return fmt.Errorf("R is the external taper thread; internal is Rc (taper) or Rp (parallel)")
	case Rc, Rp:
		return fmt.Errorf("%s is an internal thread; external is R", d.standard)
	}
	return fmt.Errorf("both external and internal; write one thread at a time")
}

func (d *draft) setForm(form string) error {
	if d.form != "" && d.form != form {
		return fmt.Errorf("both taper and parallel; write one of them")
	}
	d.form = form
	return nil
}

// setStandard keeps the narrower of two names: a flare or boss is often written
// together with the unified thread it is cut to, a metric port with its standard.
func (d *draft) setStandard(standard string) error {
	broad := []string{UNF, UN, Metric}
	switch {
	case d.standard == "" || d.standard == standard || slices.Contains(broad, d.standard):
		d.standard = standard
	case slices.Contains(broad, standard):
	default:
		return fmt.Errorf("both %s and %s; write one standard", d.standard, standard)
	}
	return nil
}

// settleStandard makes one standard of what was named, or says which are accepted.
func (d *draft) settleStandard() error {
	if d.unknown != "" {
		return d.unknownWord()
	}
	if d.metric && d.standard == "" {
		d.standard = Metric
	}
	switch d.standard {
	case "":
		return fmt.Errorf("no standard; %s", d.candidates())
	case bsp:
		switch d.form {
		case "":
			return fmt.Errorf("BSP may be parallel or tapered; write G (parallel), R (external taper) or Rc (internal taper)")
		case "parallel":
			d.standard = G
		default:
			d.standard = bspt
		}
	case Metric:
		if d.form == "taper" {
			d.standard = MetricTaper
		}
	}
	if d.standard == bspt {
		switch d.gender {
		case External:
			d.standard = R
		case Internal:
			d.standard = Rc
		default:
			return fmt.Errorf("no gender; write R (external, male) or Rc (internal, female)")
		}
	}
	return d.agree()
}

// agree checks form and gender against the standard they were written with.
func (d *draft) agree() error {
	rows := rowsOf(d.standard)
	if d.form != "" && d.form != strings.TrimSuffix(form(rows[0]), "ed") {
		return fmt.Errorf("%s is %s, not %s", d.standard, form(rows[0]), d.form)
	}
	if d.metric && !slices.Contains([]string{Metric, MetricTaper, ISO6149}, d.standard) {
		return fmt.Errorf("M is a metric size, %s is not; accepted with M: metric, taper, ISO 6149", d.standard)
	}
	if d.standard == MetricTaper && d.gender == Internal {
		return fmt.Errorf("only the external metric thread is tapered; its port is parallel: leave out %q", "taper")
	}
	return nil
}

func (d *draft) unknownWord() error {
	if d.standard == "" && !d.metric {
		hint := ""
		if near := nearest(d.unknown, standardWords()); near != "" {
			hint = fmt.Sprintf("; nearest %s", near)
		}
		if d.unknown == "sae" {
			hint = "; nearest SAE 45 (flare), JIC 37 (flare) or ORB (o-ring boss)"
		}
		return fmt.Errorf("unknown standard %q%s; accepted: %s", d.unknown, hint, accepted())
	}
	words := append(slices.Clone(fillers), "taper", "parallel", "external", "internal", "male", "female")
	if near := nearest(d.unknown, words); near != "" {
		return fmt.Errorf("unknown word %q; nearest %s", d.unknown, near)
	}
	return fmt.Errorf("unknown word %q; accepted beside size and standard: external, internal, taper, parallel", d.unknown)
}

// standardWords are the spellings long enough to be mistyped rather than mistaken.
func standardWords() []string {
	var words []string
	for _, s := range spellings {
		if len(s.words) > 2 && !strings.Contains(s.words, " ") {
			words = append(words, strings.ToUpper(s.words))
		}
	}
	return words
}

func accepted() string { return strings.Join(standards, ", ") }

// candidates names the standards that have the size written, or else all of them.
func (d *draft) candidates() string {
	var fit []string
	for _, standard := range standards {
		if t, err := sized(standard, strings.Join(d.numbers, "-")); err == nil && t.PerInch > 0 {
			fit = append(fit, standard)
		}
	}
	if len(fit) == 0 {
		return "accepted: " + accepted()
	}
	return fmt.Sprintf("that size exists as %s; write which", strings.Join(fit, ", "))
}
