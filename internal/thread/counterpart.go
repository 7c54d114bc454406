package thread

// Counterpart returns the thread that belongs on t: the same size of the other
// gender. It is false for a thread that has none in these tables.
func (t Thread) Counterpart() (Thread, bool) {
	for _, c := range All() {
		for _, gender := range []string{External, Internal} {
			if (c.Gender == "" || c.Gender == gender) && gender != t.Gender {
				c.Gender = gender
				if sameTaper := (c.Taper > 0) == (t.Taper > 0); sameTaper && c.Size == t.Size && (Mates(c, t) || Mates(t, c)) {
					if c.Standard == t.Standard || t.Standard == R || t.Standard == Rc {
						return c, true
					}
				}
			}
		}
	}
	return Thread{}, false
}
