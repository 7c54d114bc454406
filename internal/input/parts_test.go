package input_test

import (
	"encoding/json"
	"testing"

	"github.com/stretchr/testify/require"
)

// What a size code and a VIN say by their standards lies below them: given,
// missing where the text can't be read, none where texts of its kind have none.
func TestParts(t *testing.T) {
	c := newChecker(t)
	for text, want := range map[string]string{
		`chassis: {tyres: {rear_size: 33x12.50R15}}`: `{"kind": "length", "low": 0.8382, "high": 0.8382, "unit": "m"}`,
		`chassis: {tyres: {rear_size: 7.50R16}}`:     `{"none": "chassis.tyres.rear_size"}`,
		`chassis: {tyres: {rear_size: large}}`:       `{"missing": "chassis.tyres.rear_size"}`,
		`chassis: {vin: 1M8GDM9AXKP042788}`:          `{"value": true, "text": "1M8GDM9AXKP042788", "basis": "exact"}`,
		`chassis: {vin: 1M8GDM9AXKP042778}`:          `{"value": false, "text": "1M8GDM9AXKP042778", "basis": "exact"}`,
		`chassis: {vin: HJ60-012345}`:                `{"none": "chassis.vin"}`,
	} {
		_, doc := document(t, c, read(t, c, "trialfit: 1\nbuild: {name: a}\n"+text+"\n", t.TempDir()))
		chassis := doc["build"].(map[string]any)["chassis"].(map[string]any)
		part, ok := chassis["tyres"].(map[string]any)["rear_size"].(map[string]any)["diameter"]
		if !ok {
			part = chassis["vin"].(map[string]any)["check_digit"]
		}
		got, err := json.Marshal(part)
		require.NoError(t, err)
		require.JSONEq(t, want, string(got), text)
	}
}
