package engine

// NoteNotProved is the note on a subject that meets by its reading although the reading's
// whole range does not.
const NoteNotProved = "as read, not proved"

// NoteTakenAsExact is the note on a subject that a clause wants proved and that was read
// without a stated tolerance: the reading counts as exact, which proves less than it seems.
const NoteTakenAsExact = "a reading without a stated tolerance was taken as exact"
