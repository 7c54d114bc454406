package fasteners

import (
	"math"

	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

const (
	ksi        = 6.894757293168361e6 // Pa
	megapascal = 1e6                 // Pa
	inch       = 0.0254              // m
)

// Class is the strength of a bolt by the marks on its head.
type Class struct {
	Name string
	// Proof is the stress in Pa that it bears without a lasting set.
	Proof float64
	// Tensile is the least stress in Pa at which it breaks.
	Tensile float64
	// Shear is the part of Tensile that its thread bears across.
	Shear float64
	// Largest is the largest diameter in m for which that holds.
	Largest float64
	// Thread is what counts of its thread: grades are made with unified threads,
	// classes with metric ones.
	Thread Thread
}

// Thread is how many pitches come off the diameter of a thread to give the mean
// of its stress area.
type Thread float64

// The two threads of bolts, by ASME B1.1 and ISO 898-1.
const (
	Unified Thread = 0.9743
	Metric  Thread = 0.9382
)

// Classes are the classes in the order of their numbers. Grades by SAE J429 as
// on https://web.mst.edu/jthomas/classes/2211/lessons/fasteners/property_reference/index.html,
// classes by ISO 898-1 as on http://www.mem50212.com/MDME/iTester/get-info/bolts.html
// and https://vibromera.eu/calculators/bolt-strength-class-iso898; the largest
// sizes from memory. Shear by EN 1993-1-8 table 3.4; grades as the classes
// nearest to them.
var Classes = []Class{
	{"grade-2", 55 * ksi, 74 * ksi, 0.5, 0.75 * inch, Unified},
	{"grade-5", 85 * ksi, 120 * ksi, 0.6, 1 * inch, Unified},
	{"grade-8", 120 * ksi, 150 * ksi, 0.5, 1.5 * inch, Unified},
	{"class-8.8", 580 * megapascal, 800 * megapascal, 0.6, 0.039, Metric},
	{"class-10.9", 830 * megapascal, 1000 * megapascal, 0.5, 0.039, Metric},
	{"class-12.9", 970 * megapascal, 1200 * megapascal, 0.5, 0.039, Metric},
}

// Beyond M16 class 8.8 has a little more proof stress. Its tensile stress is
// counted as 800 MPa all the same, as EN 1993-1-8 does (830 by ISO 898-1).
const (
	thick      = 0.016            // m
	thickProof = 600 * megapascal // Pa
)

// numbers are the places of the words in Classes.
var numbers = func() map[string]float64 {
	m := map[string]float64{}
	for i, c := range Classes {
		m[c.Name] = float64(i)
	}
	return m
}()

// ProofStress is the stress in Pa that a bolt of a diameter in m bears without
// a lasting set.
func (c Class) ProofStress(diameter float64) float64 {
	if c.Name == "class-8.8" && diameter > thick {
		return thickProof
	}
	return c.Proof
}

func classOf(a figures.Args) Class { return Classes[int(a.At("class"))] }

var strengths = figures.Source{
	Title: "SAE J429 and ISO 898-1, proof and tensile stresses as tabled by a university and a calculator",
	URL:   "https://web.mst.edu/jthomas/classes/2211/lessons/fasteners/property_reference/index.html",
	Basis: "standard",
}

var sizeInClass = &figures.Figure{
	ID:      "fasteners.size_in_class",
	Title:   "bolt diameter against the largest that its class covers",
	Symbol:  "d/dmax",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Per:     bolts,
	Formula: "d / 3/4 in for grade 2, 1 in for grade 5, 1 1/2 in for grade 8, 39 mm for metric classes",
	Inputs:  []figures.Input{diameter(figures.Rising), class},
	Source:  strengths,
	Compute: func(a figures.Args) float64 { return a.At("d") / classOf(a).Largest },
}

// covered says that the tabled stresses hold for the size; the little above 1
// is for rounding.
var covered = []figures.Condition{{Figure: sizeInClass, Valid: figures.Bounds{Low: 0, High: 1.000001}}}

// StressArea is the area in m² that counts for the strength of a thread of a
// diameter and pitch in m.
func (h Thread) StressArea(diameter, pitch float64) float64 {
	mean := diameter - float64(h)*pitch
	return math.Pi / 4 * mean * mean
}

const areaFormula = "A = π/4·(d − c·p)², with c 0.9743 for the unified threads of grades, 0.9382 for the metric ones of classes"

var threads = figures.Source{
	Title: "stress area of metric and unified threads, ISO 898-1 and ASME B1.1",
	URL:   "https://www.google.co.il/amp/s/www.engineeringtoolbox.com/amp/metric-bolts-minimum-ultimate-tensile-proof-loads-d_2026.html",
	Basis: "standard",
}

func area(a figures.Args) float64 { return classOf(a).Thread.StressArea(a.At("d"), a.At("p")) }

var stressArea = &figures.Figure{
	ID:      "fasteners.stress_area",
	Title:   "stress area of the bolt",
	Symbol:  "A",
	Kind:    quantity.Area,
	Unit:    "mm²",
	Per:     bolts,
	Formula: areaFormula,
	Inputs:  []figures.Input{diameter(figures.Rising), pitch(figures.Falling), class},
	Source:  threads,
	Compute: area,
}

// ProofLoad is the force in N that a bolt bears without a lasting set; diameter
// and pitch are in m.
func ProofLoad(c Class, diameter, pitch float64) float64 {
	return c.ProofStress(diameter) * c.Thread.StressArea(diameter, pitch)
}

func proof(a figures.Args) float64 { return ProofLoad(classOf(a), a.At("d"), a.At("p")) }

const proofFormula = "Fp = Sp·A, with Sp 55, 85 and 120 ksi for grades 2, 5 and 8, " +
	"580 (600 above M16), 830 and 970 MPa for classes 8.8, 10.9 and 12.9; " + areaFormula

var proofLoad = &figures.Figure{
	ID:         "fasteners.proof_load",
	Title:      "proof load of one bolt",
	Symbol:     "Fp",
	Kind:       quantity.Force,
	Unit:       "kN",
	Per:        bolts,
	Formula:    proofFormula,
	Inputs:     []figures.Input{diameter(figures.Rising), pitch(figures.Falling), class},
	Conditions: covered,
	Source:     strengths,
	Compute:    proof,
}
