package sarif

// The objects of SARIF 2.1.0 that are written; see the standard for the rest.

type sarifLog struct {
	Schema  string `json:"$schema"`
	Version string `json:"version"`
	Runs    []run  `json:"runs"`
}

type run struct {
	Tool        tool          `json:"tool"`
	Invocations []invocation  `json:"invocations"`
	ColumnKind  string        `json:"columnKind"`
	Results     []result      `json:"results"`
	Properties  runProperties `json:"properties"`
}

type runProperties struct {
	Deferral string  `json:"deferral"`
	Builds   []build `json:"builds"`
}

type build struct {
	Build    string   `json:"build"`
	File     string   `json:"file"`
	Hold     string   `json:"hold"`
	Today    string   `json:"today"`
	Verdict  string   `json:"verdict"`
	Headline string   `json:"headline"`
	Regions  []string `json:"regions"`
	Cautions []string `json:"cautions"`
}

type tool struct {
	Driver driver `json:"driver"`
}

type driver struct {
	Name    string `json:"name"`
	Version string `json:"version"`
	Rules   []rule `json:"rules"`
}

type rule struct {
	ID            string         `json:"id"`
	DeprecatedIDs []string       `json:"deprecatedIds,omitempty"`
	Name          string         `json:"name"`
	Short         message        `json:"shortDescription"`
	Full          message        `json:"fullDescription"`
	Default       configuration  `json:"defaultConfiguration"`
	HelpURI       string         `json:"helpUri,omitempty"`
	Help          message        `json:"help"`
	Properties    ruleProperties `json:"properties"`
}

type configuration struct {
	Level string `json:"level"`
}

type ruleProperties struct {
	Tags     []string `json:"tags"`
	Level    string   `json:"level"`
	Hold     string   `json:"hold"`
	Basis    string   `json:"basis"`
	Source   string   `json:"source"`
	Reviewed string   `json:"reviewed"`
}

type message struct {
	Text     string `json:"text"`
	Markdown string `json:"markdown,omitempty"`
}

type invocation struct {
	Successful    bool           `json:"executionSuccessful"`
	Notifications []notification `json:"toolExecutionNotifications,omitempty"`
}

type notification struct {
	Level     string     `json:"level"`
	Message   message    `json:"message"`
	Locations []location `json:"locations"`
}

type result struct {
	RuleID       string            `json:"ruleId"`
	RuleIndex    int               `json:"ruleIndex"`
	Kind         string            `json:"kind"`
	Level        string            `json:"level"`
	Message      message           `json:"message"`
	Locations    []location        `json:"locations"`
	Fingerprints map[string]string `json:"partialFingerprints"`
	Suppressions []suppression     `json:"suppressions"`
	Properties   resultProperties  `json:"properties"`
}

type resultProperties struct {
	Outcome string `json:"outcome"`
	Level   string `json:"level"`
	Hold    string `json:"hold"`
	Build   string `json:"build"`
}

type suppression struct {
	Kind          string `json:"kind"`
	Status        string `json:"status"`
	Justification string `json:"justification"`
}

type location struct {
	Physical physicalLocation  `json:"physicalLocation"`
	Logical  []logicalLocation `json:"logicalLocations,omitempty"`
}

type logicalLocation struct {
	Name string `json:"fullyQualifiedName"`
}

type physicalLocation struct {
	Artifact artifactLocation `json:"artifactLocation"`
	Region   *region          `json:"region,omitempty"`
}

type artifactLocation struct {
	URI string `json:"uri"`
}

type region struct {
	StartLine   int `json:"startLine"`
	StartColumn int `json:"startColumn"`
}
