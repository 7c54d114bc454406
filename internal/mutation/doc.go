// Package mutation holds no code, only tests of the tests: a value that is
// taken away never leaves a pass, and a rule that is changed for the worse is
// noticed by a case or a test of its own.
package mutation
