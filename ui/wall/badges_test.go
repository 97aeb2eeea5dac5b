package wall

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"windlass/internal/desk"
	"windlass/internal/gym"
)

func TestBadgesTellStationsApart(t *testing.T) {
	for _, row := range []struct{ names, looking, running []string }{
		{[]string{"Rack 4", "Rack 7"}, []string{"4", "7"}, []string{"4", "7"}},
		{[]string{"Rack 1", "Platform 1"}, []string{"Rack 1", "Platform 1"}, []string{"1", "2"}},
		{[]string{"Window", "Door"}, []string{"Window", "Door"}, []string{"1", "2"}},
		{[]string{"Rack 4", "–"}, []string{"4", "–"}, []string{"4", "–"}},
	} {
		var stations []Station
		for i, n := range row.names {
			stations = append(stations, Station{Name: n, Number: i + 1})
			if n == "–" {
				stations[i].Number = 0
			}
		}
		assert.Equal(t, row.looking, badges(stations, true))
		assert.Equal(t, row.running, badges(stations, false))
	}
}

// Two of one name are told apart by an initial; whoever chose what to be called is
// left alone.
func TestNamesAreToldApart(t *testing.T) {
	lifter := func(id gym.ID, name, wall string) desk.BoardLifter {
		return desk.BoardLifter{Lifter: gym.Lifter{Athlete: id}, Name: name, Wall: wall}
	}
	assert.Equal(t, map[gym.ID]string{"1": "Ada L", "2": "Ada Ö", "3": "Bo", "4": "Ada", "5": "", "6": "AL", "7": "Ada"}, namesOf([]desk.BoardLifter{
		lifter("1", "Ada Lund", "Ada"), lifter("2", "Ada van der Öst", "Ada"), lifter("3", "Bo Ito", "Bo"),
		lifter("4", "Adelheid Berg", "Ada"), lifter("5", "Ada Quist", ""), lifter("6", "Ada Lehto", "AL"), lifter("7", "Ada", "Ada"),
	}))
}
