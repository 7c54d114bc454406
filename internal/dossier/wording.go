package dossier

// Every sentence that a document says by itself stands in this file, so that
// another language needs no other. Titles of rules, figures and values come
// from the catalogue, the figures and the schema.
const language = "en"

// Words for what a manifest says, or does not.
const (
	notKnown     = "not known"
	notRecorded  = "not recorded"
	none         = "none"
	yes          = "yes"
	no           = "no"
	open         = "open"
	wholeVehicle = "the whole vehicle"
	notShown     = "not shown"
)

// Titles of documents, and the mark of what is not final.
const (
	inspectorTitle = "Engine change: summary for inspection"
	ownerTitle     = "Engine change: hand-over book"
	draftFailed    = "Draft: not ready for %s"
	draftEarly     = "Draft: judged at %s, not at %s"
)

// Titles of the inspector's sections.
const (
	titleIdentity   = "The vehicle"
	titleChange     = "What was changed"
	titleRegion     = "What the region asks for"
	titleQuestions  = "Questions to the authority"
	titleFigures    = "Figures that matter to approval"
	titleReadings   = "Readings and tests"
	titleEvidence   = "Evidence"
	titleOpen       = "Unproven, not met, waived"
	titleCautions   = "Take care"
	titleStatement  = "What this document is"
	titleFindings   = "For the authority to fill in"
	titleContents   = "Contents"
	titleAttached   = "Attached files"
	pageOf          = "%d of %d"
	titleUnprinted  = "Characters not shown"
	unprintedCounts = "The font of this file lacks %d of the characters used; each stands as �. The attached manifest holds them."
)

// The first lines of the inspector's dossier.
const (
	leadVerdict = "Outcome"
	leadCounts  = "Requirements"
	leadOpen    = "Still open"
	leadRegion  = "Region"
	leadDecides = "Who decides"
	leadReading = "How to read it"

	verdictPass = "PASS at %s: every requirement that blocks there is met, waived or not applicable"
	verdictFail = "FAIL at %s: of the requirements that block there, %d of %d are not met or unproven"
	waiversUsed = ", with %s set aside by waiver"

	nothingOpen  = "nothing that is due"
	openCounts   = "%d not met, %d unproven, %d waived among what is due; see “" + titleOpen + "”"
	readingNote  = "Values stand as the builder wrote them, with how they are known (measured, documented, claimed, estimated; a word without one is the builder's own) and by which paper (E1, E2 … under “" + titleEvidence + "”). A range a..b says that the value lies between a and b. “Unproven” means that a value or a paper is missing, too weak, or too close to the limit."
	noRegion     = "none given: nothing about registration was examined"
	regionNoPack = "%s: no rules for it are at hand, so that nothing about registration was examined"
	decides      = "%s decides %s"
)

// The vehicle.
const (
	headRegistration = "Registration"
	headRatings      = "Plates and ratings"
	headEngine       = "Engine"
	headPeople       = "People responsible"
	headOriginal     = "As it was sold"

	labelVehicle  = "Vehicle"
	labelBuild    = "Build"
	labelVIN      = "VIN"
	labelDigit    = "Check digit of the VIN"
	labelWorkshop = "Workshop"
	labelPassed   = "Hold points passed"
	releasedBy    = "%s, released by %s, %s"

	digitRight   = "right: the ninth character, %s, follows from the others"
	digitWrong   = "does not fit: the ninth character is %s, by the others it would be %s; vehicles made for markets outside North America need none"
	digitNone    = "none: the number has %d characters, a check digit belongs to one of %d"
	digitUnreads = "can't be computed: the number has a character that a VIN never has"
)

// What was changed.
const (
	captionEngines  = "Engine, old against new"
	captionWeights  = "Mass that went on, came off or is carried, besides the engine"
	captionFrame    = "Frame, welds and openings"
	captionParts    = "Parts that went in"
	captionEmission = "Emission equipment"
	captionBefore   = "Found before the change"
	captionWorkDone = "Work done"
	captionHot      = "Hot parts and what lies near them"
	captionOptions  = "Engines it was sold with"
	colHot          = "Hot"
	colNear         = "Near it"
	colDistance     = "Distance"
	colShielded     = "Shielded"
	colFamily       = "Family"
	colFuel         = "Fuel"
	colYear         = "Model year"
	carried         = "carried, for the laden figures"
	fault           = "fault: %s"
	photographed    = "photographed: %s"
	seenTo          = "work item: %s"
	listed          = "%d listed"
	colWhat         = "What"
	colOld          = "Came out"
	colNew          = "Went in"
	colMass         = "Mass"
	colChange       = "Change"
	colPlace        = "Behind the front axle"
	colDetail       = "Detail"
	colSource       = "From"
	colState        = "State"
	colOf           = "Of"
	fitted          = "fitted and working"
	notFitted       = "not fitted"
	ofChassis       = "chassis"
	ofEngine        = "engine"
	added           = "went on"
	removed         = "came off"
	hole            = "hole %s in the %s"
	weld            = "weld: %s"
	opening         = "opening: %s"
	covered         = "covered: %s"
	rust            = "rust: %s"
)

// Requirements and questions.
const (
	captionRequired = "Requirements that apply"
	captionNot      = "Requirements that do not apply"
	colRequirement  = "Requirement"
	colOutcome      = "Outcome"
	colFound        = "Found"
	colPapers       = "Papers"
	colClause       = "Clause"
	colBecause      = "Because of"
	colQuestion     = "Question"
	colOffice       = "Office"
	colAnswer       = "Answer"
	levelAt         = "%s at %s"
	dueLater        = "due later"
	reviewed        = "%s, read %s"
	regionRead      = "%s (%s): sources read %s, good for %d months"
	noRequirement   = "No requirement of the region applies to what is known of this build. That is not an approval."
	noQuestion      = "The rules of this region raise no question on this build. That is not an approval."
	questionsNote   = "What only the authority can settle. Each answer is the office's own, on file under the number given."
	anyReason       = "what is known of the build"
)

// Figures.
const (
	captionFigures = "Values against their limits"
	captionWorking = "How each was computed"
	captionDrawn   = "Pictures"
	colFigure      = "Figure"
	colValue       = "Value"
	colNeeded      = "Needed"
	colMargin      = "Margin"
	colWorking     = "Formula, numbers and inputs"
	figuresNote    = "Computed from the builder's values as ranges; the margin is at the worse end. Shown is what a requirement that blocks, or one of the region, holds against a limit; the attached report has the rest."
	noFigure       = "No figure that a blocking requirement or the region holds against a limit has a value yet."
	formulaIs      = "formula: %s"
	numbersAre     = "numbers: %s"
	inputsAre      = "inputs: %s"
	weakest        = "weakest input: %s"
	pictureLacks   = "not drawn: %s; lacking: %s"
)

// Readings, tests and evidence.
const (
	captionReadings = "Readings"
	captionLeaks    = "Found wet after the road test"
	colWhere        = "Where"
	colStopped      = "Stopped"
	captionTests    = "Proved and measured on the vehicle"
	captionEvidence = "Papers and files"
	captionPhotos   = "Pictures among the evidence"
	captionRefused  = "Evidence that could not be shown or trusted"
	colDate         = "Date"
	colCondition    = "Condition"
	colInstrument   = "Instrument"
	colPerson       = "Person"
	colNumber       = "No"
	colShows        = "What it shows"
	colIssuer       = "Issuer, date"
	colFile         = "File and SHA-256"
	noReading       = "No reading is on record."
	noTest          = "No test is on record."
	noEvidence      = "No evidence is on file."
	takenBy         = "taken by %s"
	shows           = "%s: %s"
	showsNothing    = "no single value"
	noFile          = "no file"

	stateIntact     = "as recorded"
	stateChanged    = "not the file whose digest was recorded"
	stateMissing    = "the file is not there"
	stateUnrecorded = "no digest was recorded"
	statePointer    = "content not at hand, digest by its pointer"
	stateRefused    = "refused: %s"
)

// Why a picture is not shown; %s is the number of the paper.
const (
	photoFailed  = "%s is no picture that can be shown: %s"
	photoRefused = "%s: %s"
)

// What is open.
const (
	captionNotMet   = "Not met, and in the way"
	captionUnproven = "Unproven, and in the way"
	captionWaived   = "Set aside by a waiver"
	captionAdvice   = "Advice that is not met or unproven"
	captionLater    = "Open, and due later than the hold point judged"
	captionIdle     = "Waivers without effect"
	captionWork     = "Work not done yet"
	captionOverdue  = "Sources read too long ago"
	colWaiver       = "Waiver"
	colUntil        = "Until"
	colSettles      = "What would settle it"
	closeBy         = "to be closed by %s"
	waiverSays      = "%s: %s"
	waiverIdle      = "%s, on “%s”, %s; its reason: %s; by %s"
	waiverBy        = "by %s"
	waiverPaper     = "authority's document: "
	onSubject       = "on %s"
	nothingToList   = "Nothing of this kind."
)

// Statement and boxes.
const (
	statementSummary  = "This is the builder's own summary of an engine change, written by a program from the builder's record and from files kept with it. It is not an approval, a certificate or an expert's opinion, and it bears no authority's mark."
	statementRests    = "Approval rests with:"
	statementNobody   = "Approval rests with the authority of the place where the vehicle is registered."
	statementExamined = "Examined were %d requirements as of %s, those of the regions %s among them. What no rule here looks at was not examined."
	statementGeneral  = "Examined were %d requirements as of %s. What no rule here looks at was not examined."
	statementDigest   = "The record it was written from has this SHA-256: "
	attachedManifest  = "the builder's record"
	attachedReport    = "the report on it, for programs"

	boxFindings = "Findings"
	boxOutcome  = "Outcome"
	boxName     = "Name and office"
	boxDate     = "Date"
	boxStamp    = "Signature and stamp"
)

// Titles of the owner's sections.
const (
	titleService = "Service parts"
	titleFluids  = "Fluids and capacities"
	titleTorque  = "Torques to check again"
	titleRunIn   = "Run-in"
	titleFuses   = "Fuses and relays"
	titleGauges  = "Gauges and senders"
	titleUnused  = "Unused wiring"
	titleBay     = "The engine bay"
	titleLimits  = "Limits"
	titleParts   = "Parts that went in"
	titleLeft    = "Handed over open"
)

// The owner's tables.
const (
	captionService      = "What wears out, with the number to order"
	captionFluids       = "What is filled in"
	captionTorque       = "Bolts to torque again"
	captionBolts        = "Bolts of frame and mounts as tightened"
	captionFuses        = "Circuits that were added, with their fuses"
	captionRelays       = "Relays that were added"
	captionGauges       = "Gauges and warnings"
	captionSenders      = "Senders, from the port to the thread"
	captionReached      = "What is reached for service"
	captionLines        = "Lines near what moves"
	colReachable        = "Reached"
	colHeld             = "Clipped on both sides"
	noZones             = "none, says the builder."
	noReached           = "none, says the builder."
	noLines             = "none, says the builder."
	captionBay          = "What sits where in the engine bay"
	colZone             = "Where"
	colOccupant         = "What sits there"
	captionUnused       = "Connectors that nothing is plugged into"
	captionLoads        = "Loads"
	captionTowing       = "Towing"
	captionFording      = "Fording"
	captionEngineLimits = "Engine"
	captionStop         = "How the engine is stopped"

	colKind       = "Kind"
	colPartNumber = "Number"
	colWhen       = "When"
	colFilledInto = "Filled into"
	colGrade      = "Grade"
	colCapacity   = "Capacity"
	colTorque     = "Torque"
	colDone       = "Torqued again"
	colAgain      = "Due again"
	colClass      = "Class"
	colCount      = "Number"
	colDiameter   = "Diameter"
	colFeeds      = "Feeds"
	colFuse       = "Fuse"
	colSits       = "Where it sits"
	colWire       = "Wire"
	colCurrent    = "Current"
	colSwitches   = "Switches"
	colShown      = "Shows"
	colSender     = "Sender"
	colWarning    = "Warns and stops at"
	colServes     = "Serves"
	colPort       = "Port"
	colAdapters   = "Adapters"
	colThread     = "Sender thread"
	colEnd        = "What became of it"
	adapterIs     = "%s, takes %s"

	ownerNote  = "Keep this book in the vehicle. Whoever works on it, or insures it, needs to know that the engine is not the one it was sold with. What the builder did not write down is said to be not known: ask before relying on it."
	notWritten = "not written down by the builder; ask before relying on it."
	noService  = "none, says the builder."
	noFluids   = "none, says the builder."
	noTorque   = "none, says the builder."
	noFuses    = "none."
	noRelays   = "none."
	noGauges   = "none, says the builder."
	noUnused   = "none."
	noParts    = "None, says the builder."
	torqueNote = "Mounts, adapter, shafts and wheels settle. Torque them again cold, on level ground, at the distances given, and after any work on them."
	leftNote   = "What requirements ask for and is not met, not proven, or set aside by a waiver, and work that is not done."
)

// ownerCare is what everybody who looks after the vehicle is told.
var ownerCare = []string{
	"support the vehicle on stands on level ground before going under it; a jack alone holds nothing",
	"let engine, exhaust and cooling system cool before opening or touching them; coolant under pressure scalds",
	"never feel for a leak of injection fuel with the hand: the jet goes through the skin",
	"disconnect the battery, negative first, before working on its cables; a battery gives off gas that burns",
	"work on brakes, steering, fuel, refrigerant and welds is for people trained and, where the law says so, licensed for it",
	"do not go beyond the ratings on the vehicle's plates: a new engine by itself raises none of them",
}
