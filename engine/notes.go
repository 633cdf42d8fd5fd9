package engine

// NoteNotProved is the note on a subject that meets by its reading although the reading's
// whole range does not.
const NoteNotProved = noteNotProved
