package shafts

import (
	"math"
	"math/cmplx"

	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// Joint is the working angle of a cardan joint in rad with the plane it lies in:
// the real part in side view, the imaginary part in plan.
type Joint complex128

// JointOf is the joint between two lines, Side and Plan in rad.
func JointOf(from, to Line) Joint {
	plane := complex(math.Tan(to.Side)-math.Tan(from.Side), math.Tan(to.Plan)-math.Tan(from.Plan))
	if plane == 0 {
		return 0
	}
	return Joint(plane * complex(Angle(from, to)/cmplx.Abs(plane), 0))
}

// TorsionalAcceleration is the amplitude in rad/s² of the angular acceleration,
// twice a turn, that two cardan joints on one shaft leave behind them, from the
// speed of the shaft in rad/s, the joints, and the angle in rad between the yokes
// at the ends of the shaft, 0 where they are in line. Small angles.
func TorsionalAcceleration(speed float64, driving, driven Joint, phasing float64) float64 {
	turned := cmplx.Rect(1, 2*phasing)
	left := complex128(driving)*complex128(driving) - complex128(driven)*complex128(driven)*turned
	return speed * speed * cmplx.Abs(left)
}

// InertiaAcceleration is the amplitude in rad/s² of the angular acceleration of
// the shaft itself behind a cardan joint, from its speed in rad/s and the working
// angle in rad. Small angles.
func InertiaAcceleration(speed, angle float64) float64 { return speed * speed * angle * angle }

var excitation = figures.Source{
	Title: "second order of a cardan joint, amplitude ω²·θ² for small angles; residual of two joints after SAE AE-7 (from memory), agreeing with the two-joint chart",
	URL:   "https://host.engineersedge.com/vehicle_driveline_design.htm",
	Basis: "physics",
}

var torsional = &figures.Figure{
	ID:      "shafts.torsional_acceleration",
	Title:   "torsional acceleration left behind the two joints",
	Symbol:  "αt",
	Kind:    quantity.AngularAcceleration,
	Per:     perShaft,
	Formula: "n²·|θ1² − θ2²·e^(2iδ)|, each θ a complex number in its plane, 0 for a joint of constant velocity, δ the phasing; in one plane and in phase n²·|θ1² − θ2²|; " + speedFormula + "; " + bothFormula,
	Inputs: append(append(append(bothEnds(), jointInputs()...), speedInputs()...),
		figures.Input{Name: "δ", Path: "shafts.*.phasing", Valid: figures.Bounds{Low: -math.Pi / 2, High: math.Pi / 2}}),
	Source: excitation,
	Compute: func(a figures.Args) float64 {
		driving, driven := JointOf(line(a, "1"), line(a, "s")), JointOf(line(a, "s"), line(a, "2"))
		k1, k2 := complex(a.At("k1"), 0), complex(a.At("k2"), 0)
		return TorsionalAcceleration(speedOf(a), driving*Joint(k1), driven*Joint(k2), a.At("δ"))
	},
}

var inertiaDrive = &figures.Figure{
	ID:     "shafts.inertia_drive",
	Title:  "acceleration of the shaft's inertia while driving",
	Symbol: "αd",
	Kind:   quantity.AngularAcceleration,
	Per:    perShaft,
	Formula: "αd = k1·n²·θ1², k1 1 for a cardan joint and 0 for one of constant velocity; " + speedFormula + "; " +
		drivingFormula + "; " + flange1 + "; " + shaftTangents + "; " + seen,
	Inputs: append(append(drivingInputs(), jointInputs()[:1]...), speedInputs()...),
	Source: excitation,
	Compute: func(a figures.Args) float64 {
		return a.At("k1") * InertiaAcceleration(speedOf(a), drivingAngle(a))
	},
}

var inertiaCoast = &figures.Figure{
	ID:     "shafts.inertia_coast",
	Title:  "acceleration of the shaft's inertia while coasting",
	Symbol: "αc",
	Kind:   quantity.AngularAcceleration,
	Per:    perShaft,
	Formula: "αc = k2·n²·θ2², k2 1 for a cardan joint and 0 for one of constant velocity; " + speedFormula + "; " +
		drivenFormula + "; " + flange2 + "; " + shaftTangents + "; " + seen,
	Inputs: append(append(drivenInputs(), jointInputs()[1:]...), speedInputs()...),
	Source: excitation,
	Compute: func(a figures.Args) float64 {
		return a.At("k2") * InertiaAcceleration(speedOf(a), drivenAngle(a))
	},
}
