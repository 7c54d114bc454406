package parity

import (
	"context"
	"io"
	"os"
	"path/filepath"
	gosched "runtime"
	"testing"

	"github.com/open-policy-agent/opa/v1/logging"
	"github.com/open-policy-agent/opa/v1/runtime"
	"github.com/stretchr/testify/require"

	"trialfit/internal/rulebook"
)

// serve starts a stock OPA server on the loopback interface with the exported
// bundle of a book, and returns its address. It reports to nobody.
func serve(t *testing.T, book *rulebook.Book) string {
	t.Helper()
	bundle := filepath.Join(t.TempDir(), "bundle.tar.gz")
	file, err := os.Create(bundle)
	require.NoError(t, err)
	require.NoError(t, book.WriteBundle(file))
	require.NoError(t, file.Close())

	params := runtime.NewParams()
	params.Addrs = &[]string{"127.0.0.1:0"}
	params.Paths = []string{bundle}
	params.BundleMode = true
	params.EnableVersionCheck = false
	params.GracefulShutdownPeriod = 10
	params.Logger = logging.NewNoOpLogger()
	params.ConsoleLogger = logging.NewNoOpLogger()
	params.Output = io.Discard

	ctx, cancel := context.WithCancel(context.Background())
	server, err := runtime.NewRuntime(ctx, params)
	require.NoError(t, err)
	var fault error
	stopped := make(chan struct{})
	go func() {
		fault = server.Serve(ctx)
		close(stopped)
	}()
	t.Cleanup(func() {
		cancel()
		<-stopped
		require.NoError(t, fault)
	})
	// The server announces itself a moment before its listener has a port.
	select {
	case <-server.Manager.ServerInitializedChannel():
	case <-stopped:
		require.NoError(t, fault, "starting to serve")
	}
	for {
		if addrs := server.Addrs(); len(addrs) == 1 && addrs[0] != "" {
			return "http://" + addrs[0]
		}
		select {
		case <-stopped:
			require.NoError(t, fault, "serving")
		default:
			gosched.Gosched()
		}
	}
}
