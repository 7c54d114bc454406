package figures

// Enough returns the smallest size of an input's Series with which the figure
// meets the limit over the whole range of its other inputs, and the path of
// that input. The input itself may be missing or out of bounds: its size is
// what is asked for. It is not ok when no scalar input has a Series, when
// another input has no value, or when none of the sizes meets the limit.
// Limits are in SI units. Metric says whether an input is written in metric units;
// nil is no.
func Enough(r Result, comparator Comparator, limitLow, limitHigh float64, metric func(path string) bool) (path string, size Size, ok bool) {
	if r.box == nil {
		return "", Size{}, false
	}
	for _, s := range r.box.slots {
		if s.input.Series == nil || s.index != scalar || s.dim < 0 {
			continue
		}
		path := r.box.dims[s.dim].path
		series := s.input.Series
		if series.Metric != nil && metric != nil && metric(path) {
			series = series.Metric
		}
		for _, size := range series.Sizes {
			low, high, has := r.At(map[string]Range{path: {size.SI, size.SI}})
			if has && comparator.met(Range{low, high}, Range{limitLow, limitHigh}) {
				return path, size, true
			}
		}
	}
	return "", Size{}, false
}
