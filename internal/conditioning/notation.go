package conditioning

import (
	"fmt"
	"strconv"
	"strings"

	"windlass/internal/gym"
	"windlass/internal/mass"
)

// The grammar of a workout in one line. Words are told apart by spaces; case does
// not matter.
//
//	workout   = head ":" item { "," item }
//	head      = "amrap" clock
//	          | "for time" ( number "rounds" | reps ) [ "rest" clock ] [ "cap" clock ]
//	          | "chipper" [ "cap" clock ]
//	          | "emom" clock
//	          | "intervals" number "x" clock [ "rest" clock ]
//	          | "sets" number [ "rest" clock ]
//	item      = "rest" | [ amount ] movement [ "@" standard loads [ standard loads ] ]
//	amount    = number [ "m" | "cal" | "s" ]
//	movement  = a key or a name without "," "@" and ":"
//	standard  = "M" | "W"
//	loads     = load "/" load "/" load                     full, mid and light
//	clock     = [ number ":" ] number ":" number           hours, minutes, seconds
//	reps      = number "-" number { "-" number }
//
// For example:
//
//	for time 21-15-9 cap 10:00: dumbbell-thruster @ M 20kg/15kg/10kg, burpee
//	amrap 12:00: 10 kettlebell-swing, 200m row-metres

// Parse reads a workout in one line. find turns what is written into a movement
// of the catalogue, and nil takes it as the movement's key. The error says which
// part was not understood; a workout that was read passes [Check].
func Parse(text string, find Find) (gym.Workout, error) {
	head, body, ok := cutHead(text)
	if !ok {
		return gym.Workout{}, unread(text, `there is no ":" between the format and the movements`)
	}
	w, why := parseHead(strings.Fields(strings.ToLower(head)))
	if why != "" {
		return gym.Workout{}, unread(text, why)
	}
	for part := range strings.SplitSeq(body, ",") {
		item, why := parseItem(part, find)
		if why != "" {
			return gym.Workout{}, unread(text, why)
		}
		w.Items = append(w.Items, item)
	}
	if err := Check(w, find); err != nil {
		return gym.Workout{}, fmt.Errorf("read workout %q: %w", text, err)
	}
	return w, nil
}

func unread(text, why string) error {
	return fmt.Errorf("read workout %q: %s; write it like amrap 12:00: 10 kettlebell-swing, 15 burpee", text, why)
}

// cutHead cuts at the colon that ends the head: the first with no digit behind it,
// as a clock's colons have one.
func cutHead(text string) (head, body string, ok bool) {
	for i, r := range text {
		if r == ':' && (i+1 == len(text) || text[i+1] < '0' || text[i+1] > '9') {
			return text[:i], text[i+1:], true
		}
	}
	return "", "", false
}

// words is what is left of a head; each take eats what it understands.
type words []string

func (w *words) take(want string) bool {
	if len(*w) == 0 || (*w)[0] != want {
		return false
	}
	*w = (*w)[1:]
	return true
}

// number eats a whole number over 0.
func (w *words) number() int {
	if len(*w) == 0 {
		return 0
	}
	n := whole((*w)[0])
	if n > 0 {
		*w = (*w)[1:]
	}
	return n
}

// clock eats a time, and returns 0 where there is none.
func (w *words) clock() int {
	if len(*w) == 0 {
		return 0
	}
	n, ok := parseClock((*w)[0])
	if !ok {
		return 0
	}
	*w = (*w)[1:]
	return n
}

func parseHead(w words) (gym.Workout, string) {
	out, why := parseFormat(&w)
	for why == "" && len(w) > 0 {
		field, word := &out.Rest, w[0]
		switch {
		case w.take("rest"):
		case w.take("cap"):
			field = &out.Cap
		default:
			return out, fmt.Sprintf("%q is not understood", word)
		}
		if *field > 0 {
			return out, fmt.Sprintf("the %s is said twice", word)
		}
		if *field = w.clock(); *field == 0 {
			why = fmt.Sprintf("the %s has no time", word)
		}
	}
	return out, why
}

func parseFormat(w *words) (out gym.Workout, why string) {
	switch {
	case w.take("amrap"):
		out.Format, out.Seconds = gym.AMRAP, w.clock()
	case w.take("emom"):
		out.Format, out.Seconds = gym.EMOM, w.clock()
	case w.take("chipper"):
		out.Format = gym.Chipper
	case w.take("for"):
		return parseForTime(w)
	case w.take("intervals"):
		out.Format, out.Rounds = gym.Intervals, w.number()
		if !w.take("x") {
			return out, `the "x" between rounds and work time is missing`
		}
		out.Work = w.clock()
	case w.take("sets"):
		out.Format, out.Rounds = gym.PlainSets, w.number()
	default:
		return out, "the format is none of amrap, for time, chipper, emom, intervals and sets"
	}
	return out, ""
}

// parseForTime reads what follows the word "for".
func parseForTime(w *words) (out gym.Workout, why string) {
	out.Format = gym.ForTime
	if !w.take("time") {
		return out, `the word "time" is missing`
	}
	if len(*w) > 0 {
		if out.Reps = parseReps((*w)[0]); out.Reps != nil {
			*w = (*w)[1:]
			return out, ""
		}
	}
	if out.Rounds = w.number(); out.Rounds > 0 && !w.take("rounds") && !w.take("round") {
		return out, `the word "rounds" is missing`
	}
	return out, ""
}

func parseReps(text string) []int {
	parts := strings.Split(text, "-")
	if len(parts) < 2 {
		return nil
	}
	reps := make([]int, len(parts))
	for i, p := range parts {
		if reps[i] = whole(p); reps[i] == 0 {
			return nil
		}
	}
	return reps
}

// whole reads plain digits; anything else, and a number of over six of them, is 0.
func whole(text string) int {
	if len(text) == 0 || len(text) > 6 || strings.Trim(text, "0123456789") != "" {
		return 0
	}
	n, _ := strconv.Atoi(text) // six digits always fit
	return n
}

func parseItem(text string, find Find) (item gym.Item, why string) {
	name, loads, loaded := strings.Cut(text, "@")
	fields := strings.Fields(name)
	if len(fields) == 1 && strings.EqualFold(fields[0], "rest") && !loaded {
		return item, ""
	}
	unit := gym.Measure("")
	if len(fields) > 0 {
		if n, u := splitAmount(strings.ToLower(fields[0])); n > 0 {
			item.Amount, unit, fields = n, u, fields[1:]
		}
	}
	item.Movement = gym.MovementKey(strings.Join(fields, " "))
	if item.Movement == "" {
		return item, fmt.Sprintf("%q has no movement", strings.TrimSpace(text))
	}
	if find != nil {
		m, ok := find(string(item.Movement))
		if !ok {
			return item, fmt.Sprintf("%q is not in the catalogue", item.Movement)
		}
		if unit != "" && unit != m.Measure {
			return item, fmt.Sprintf("%q is not counted by %s", item.Movement, unit)
		}
		item.Movement = m.Key
	}
	if loaded {
		item.Loads, why = parseLoads(strings.Fields(loads))
	}
	return item, why
}

// units are the marks of what an amount counts; reps have none.
var units = []struct {
	mark    string
	measure gym.Measure
}{{"cal", gym.ByCalories}, {"m", gym.ByDistance}, {"s", gym.ByHold}}

func splitAmount(text string) (int, gym.Measure) {
	for _, u := range units {
		if n := whole(strings.TrimSuffix(text, u.mark)); n > 0 && strings.HasSuffix(text, u.mark) {
			return n, u.measure
		}
	}
	return whole(text), ""
}

func parseLoads(fields []string) (map[gym.Standard]gym.TierLoads, string) {
	if len(fields) == 0 || len(fields)%2 != 0 {
		return nil, "the loads want M or W and then three loads"
	}
	loads := map[gym.Standard]gym.TierLoads{}
	for i := 0; i < len(fields); i += 2 {
		standard := gym.Standard(strings.ToUpper(fields[i]))
		parts := strings.Split(fields[i+1], "/")
		if _, twice := loads[standard]; twice || len(parts) != 3 {
			return nil, fmt.Sprintf("%q is not one standard with full, mid and light", strings.Join(fields[i:i+2], " "))
		}
		var three [3]mass.Mass
		for j, p := range parts {
			m, _, err := mass.Parse(p, mass.KG)
			if err != nil {
				return nil, fmt.Sprintf("the load %q is not understood", p)
			}
			three[j] = m
		}
		loads[standard] = gym.TierLoads{Full: three[0], Mid: three[1], Light: three[2]}
	}
	return loads, ""
}
