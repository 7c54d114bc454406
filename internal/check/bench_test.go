package check_test

import (
	"bytes"
	"context"
	"fmt"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/stretchr/testify/require"

	"trialfit/internal/check"
)

// Ratios between these benchmarks are what counts; take them from one run:
//
//	go test ./internal/check -run NONE -bench .

const example = "../../examples/patrol-truck/patrol-truck.build.yaml"

var options = check.Options{Hold: "install", Today: "2026-11-25"}

// BenchmarkColdCheck is one manifest from nothing: rules read and compiled,
// manifest loaded, computed and judged.
func BenchmarkColdCheck(b *testing.B) {
	for b.Loop() {
		checker, err := check.New(options)
		require.NoError(b, err)
		_, err = checker.File(b.Context(), example)
		require.NoError(b, err)
	}
}

// BenchmarkOneMore is one more manifest once the rules are compiled.
func BenchmarkOneMore(b *testing.B) {
	checker, _ := warm(b)
	for b.Loop() {
		_, err := checker.File(b.Context(), example)
		require.NoError(b, err)
	}
}

// BenchmarkInput is the part of BenchmarkOneMore before the rules: the manifest
// loaded and its figures computed.
func BenchmarkInput(b *testing.B) {
	checker, _ := warm(b)
	for b.Loop() {
		m, err := checker.Loader.File(example)
		require.NoError(b, err)
		_, err = checker.Prepare(m)
		require.NoError(b, err)
	}
}

// BenchmarkBareQuery is the prepared query alone, on the same input.
func BenchmarkBareQuery(b *testing.B) {
	checker, report := warm(b)
	judge, err := checker.Book.Prepare(b.Context(), report.Chain)
	require.NoError(b, err)
	input, err := ast.InterfaceToValue(report.Input)
	require.NoError(b, err)
	for b.Loop() {
		_, err := judge.Decide(b.Context(), input)
		require.NoError(b, err)
	}
}

// BenchmarkThousand judges 10 and 1000 manifests that differ in name and
// engine mass, and reports the heap in use at the end with one report kept.
func BenchmarkThousand(b *testing.B) {
	for _, count := range []int{10, 1000} {
		b.Run(fmt.Sprint(count), func(b *testing.B) {
			files := write(b, count)
			for b.Loop() {
				checker, err := check.New(options)
				require.NoError(b, err)
				var last *check.Report
				for _, file := range files {
					last, err = checker.File(b.Context(), file)
					require.NoError(b, err)
				}
				b.ReportMetric(float64(heap())/(1<<20), "MiB-heap")
				runtime.KeepAlive(last)
			}
			b.ReportMetric(float64(b.Elapsed().Microseconds())/1e3/float64(b.N*count), "ms/manifest")
		})
	}
}

func warm(b *testing.B) (*check.Checker, *check.Report) {
	checker, err := check.New(options)
	require.NoError(b, err)
	report, err := checker.File(context.Background(), example)
	require.NoError(b, err)
	return checker, report
}

// heap returns the bytes in use after a collection.
func heap() uint64 {
	runtime.GC()
	var stats runtime.MemStats
	runtime.ReadMemStats(&stats)
	return stats.HeapAlloc
}

// write lays out variants of the example with its evidence.
func write(b *testing.B, count int) []string {
	text, err := os.ReadFile(example)
	require.NoError(b, err)
	sums, err := os.ReadFile(strings.Replace(example, ".build.yaml", ".evidence.sha256", 1))
	require.NoError(b, err)
	dir := b.TempDir()
	require.NoError(b, os.CopyFS(filepath.Join(dir, "evidence"), os.DirFS(filepath.Join(filepath.Dir(example), "evidence"))))
	files := make([]string, count)
	for i := range files {
		name := filepath.Join(dir, fmt.Sprintf("truck-%04d", i))
		files[i] = name + ".build.yaml"
		variant := bytes.Replace(text, []byte(`"745 lb ± 20"`), fmt.Appendf(nil, `"%d lb ± 20"`, 700+i%100), 1)
		require.NoError(b, os.WriteFile(files[i], variant, 0o644))
		require.NoError(b, os.WriteFile(name+".evidence.sha256", sums, 0o644))
	}
	return files
}
