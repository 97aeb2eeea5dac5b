package gym

import "windlass/internal/mass"

// The columns of the tables. In lifts.csv and movements.csv, M and W stand for
// the load standards.
const (
	colKey       = "key"
	colName      = "name"
	colAliases   = "also written"
	colRegion    = "region"
	colPattern   = "pattern"
	colBar       = "bar"
	colFloor     = "from the floor"
	colMeasure   = "measure"
	colReps      = "reps recorded"
	colRelated   = "related lift"
	colRatioLow  = "ratio low"
	colRatioHigh = "ratio high"
	colSource    = "ratio source"
	colUsual     = "usual 1RM" // followed by M or W
	colImplement = "implement"
	colPair      = "pair"
	colLinked    = "linked lift"
	colReference = "reference reps"
	colSeconds   = "seconds each"
	colFull      = "full" // these three after M or W
	colMid       = "mid"
	colLight     = "light"
	colMuscle    = "muscle"
	colSpares    = "spares"
	colDose      = "dose"
	colKind      = "kind"
	colMasses    = "masses"
	colCount     = "count"
)

func liftColumns() []string {
	return []string{
		colKey, colName, colAliases, colRegion, colPattern, colBar, colFloor, colMeasure, colReps,
		colRelated, colRatioLow, colRatioHigh, colSource, colUsual + " M", colUsual + " W",
	}
}

func readLift(r *row) Lift {
	return Lift{
		Key: LiftKey(r.text(colKey)), Name: r.text(colName), Aliases: r.list(colAliases),
		Region: Region(r.text(colRegion)), Pattern: Pattern(r.text(colPattern)),
		Bar: r.text(colBar), Floor: r.yes(colFloor),
		Measure: Measure(r.text(colMeasure)), Reps: r.counts(colReps),
		Related: LiftKey(r.text(colRelated)), RatioLow: r.number(colRatioLow), RatioHigh: r.number(colRatioHigh),
		Source: r.text(colSource), Reference: r.reference(),
	}
}

func (r *row) reference() map[Standard]mass.Mass {
	var usual map[Standard]mass.Mass
	for _, s := range Standards() {
		column := colUsual + " " + string(s)
		text := r.text(column)
		if text == "" {
			continue
		}
		if usual == nil {
			usual = map[Standard]mass.Mass{}
		}
		usual[s], _ = r.load(column, text)
	}
	return usual
}

func movementColumns() []string {
	return []string{
		colKey, colName, colRegion, colPattern, colMeasure, colImplement, colPair, colLinked, colReference, colSeconds,
		"M " + colFull, "M " + colMid, "M " + colLight, "W " + colFull, "W " + colMid, "W " + colLight,
	}
}

func readMovement(r *row) Movement {
	return Movement{
		Key: MovementKey(r.text(colKey)), Name: r.text(colName),
		Region: Region(r.text(colRegion)), Pattern: Pattern(r.text(colPattern)),
		Measure: Measure(r.text(colMeasure)), Implement: r.text(colImplement), Pair: r.yes(colPair), Linked: LiftKey(r.text(colLinked)),
		ReferenceReps: r.count(colReference), Seconds: r.number(colSeconds), Loads: r.tiers(),
	}
}

// tiers returns nil for a movement without loads; a standard with one load of
// the three is kept, for [Movement.Valid] to name what is missing.
func (r *row) tiers() map[Standard]TierLoads {
	var loads map[Standard]TierLoads
	for _, s := range Standards() {
		t := TierLoads{Full: r.tier(s, colFull), Mid: r.tier(s, colMid), Light: r.tier(s, colLight)}
		if t == (TierLoads{}) {
			continue
		}
		if loads == nil {
			loads = map[Standard]TierLoads{}
		}
		loads[s] = t
	}
	return loads
}

func (r *row) tier(s Standard, tier string) mass.Mass {
	column := string(s) + " " + tier
	m, _ := r.load(column, r.text(column))
	return m
}

func finisherColumns() []string { return []string{colKey, colName, colMuscle, colRegion, colSpares} }

func readFinisher(r *row) Finisher {
	return Finisher{
		Key: r.text(colKey), Name: r.text(colName), Muscle: r.text(colMuscle),
		Region: Region(r.text(colRegion)), Spares: r.text(colSpares),
	}
}

func drillColumns() []string { return []string{colKey, colName, colPattern, colDose} }

func readDrill(r *row) Drill {
	return Drill{Key: r.text(colKey), Name: r.text(colName), Pattern: Pattern(r.text(colPattern)), Dose: r.text(colDose)}
}

func implementColumns() []string { return []string{colKind, colMasses, colCount} }

// readImplement takes the unit of the first mass; a kind that is never lifted
// whole, such as a box, has none and counts in kg.
func readImplement(r *row) Implement {
	i := Implement{Kind: r.text(colKind), Unit: mass.KG, Total: r.count(colCount)}
	for n, item := range r.list(colMasses) {
		p := r.piece(colMasses, item)
		i.Masses = append(i.Masses, p.mass)
		if n == 0 {
			i.Unit = p.unit
		}
		if p.count > 0 {
			if i.Each == nil {
				i.Each = map[mass.Mass]int{}
			}
			i.Each[p.mass] = p.count
		}
	}
	return i
}
