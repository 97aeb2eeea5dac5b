package wall

import (
	"strconv"
	"strings"

	"windlass/internal/desk"
	"windlass/internal/gym"
)

// badges are what tells stations apart: the number in their names where all have
// one of their own, otherwise their names while lifters look for their places, and
// after that their numbers in the gym's list.
func badges(stations []Station, byName bool) []string {
	numbered, places, names := make([]string, len(stations)), make([]string, len(stations)), make([]string, len(stations))
	apart := map[string]bool{}
	for i, s := range stations {
		numbered[i], places[i], names[i] = numberOf(s.Name), strconv.Itoa(s.Number), s.Name
		if s.Number == 0 {
			numbered[i], places[i] = s.Name, s.Name
		}
		if numbered[i] != "" {
			apart[numbered[i]] = true
		}
	}
	switch {
	case len(apart) == len(stations):
		return numbered
	case byName:
		return names
	}
	return places
}

// numberOf is the number at the end of a station's name, or nothing.
func numberOf(name string) string {
	number := name[strings.LastIndex(name, " ")+1:]
	if strings.Trim(number, "0123456789") != "" {
		return ""
	}
	return number
}

// namesOf are the names of lifters on the wall. Two who would be called the same
// get the initial of their family name as well, where the wall shows the first name
// at all: who chose another name, initials or none is shown as they chose.
func namesOf(lifters []desk.BoardLifter) map[gym.ID]string {
	count := map[string]int{}
	for _, l := range lifters {
		count[l.Wall]++
	}
	names := map[gym.ID]string{}
	for _, l := range lifters {
		names[l.Athlete] = l.Wall
		parts := strings.Fields(l.Name)
		if last := len(parts) - 1; count[l.Wall] > 1 && last > 0 && l.Wall == parts[0] {
			names[l.Athlete] += " " + string([]rune(parts[last])[:1])
		}
	}
	return names
}
