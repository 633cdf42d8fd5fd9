# Nothing here but remarks. # want 1 empty-sheet `Found nothing but blanks and remarks\. A sheet begins with the car: car "NAME" \{ chassis = "…" \}\.$`
/* And this
one. */
