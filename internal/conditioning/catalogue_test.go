package conditioning

import (
	"github.com/stretchr/testify/require"

	"windlass/data"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

func kg(x float64) mass.Mass { return mass.Of(x, mass.KG) }

// catalogue returns the built-in catalogue and a way to find its movements.
func catalogue(t require.TestingT) (gym.Catalogue, Find) {
	c, err := gym.ReadCatalogue(data.Files())
	require.NoError(t, err)
	return c, finder(c.Movements)
}

func finder(movements []gym.Movement) Find {
	byName := map[string]gym.Movement{}
	for _, m := range movements {
		byName[string(m.Key)], byName[m.Name] = m, m
	}
	return func(name string) (gym.Movement, bool) { m, ok := byName[name]; return m, ok }
}

func lift(t require.TestingT, c gym.Catalogue, key gym.LiftKey) gym.Lift {
	for _, l := range c.Lifts {
		if l.Key == key {
			return l
		}
	}
	require.FailNow(t, "no lift", key)
	return gym.Lift{}
}

func do(n int, m gym.MovementKey) gym.Item { return gym.Item{Movement: m, Amount: n} }

// crowd is a class in which every third athlete takes each tier, and every other
// each load standard.
func crowd(size int, owned gym.Equipment, c gym.Catalogue) Crowd {
	find := finder(c.Movements)
	return Crowd{Size: size, Owned: owned, Load: func(athlete int, item gym.Item) mass.Mass {
		m, _ := find(string(item.Movement))
		tier := []gym.Tier{gym.Full, gym.Mid, gym.Light}[athlete%3]
		return m.Loads[gym.Standards()[athlete%2]].Of(tier)
	}}
}
