// Package parity holds no code, only a test: a stock OPA server, loaded with
// the exported bundle, takes the same decision as trialfit does, byte for byte,
// on every example and every case of every rule.
package parity
