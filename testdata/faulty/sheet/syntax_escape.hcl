car "Tessel 16" {
  chassis = "TS\0417" # want 16 bad-escape `Found "\\\\0"\. In double quotes write \\\\ for a backslash, \\" for a quote, \\n for a line break\.$`
  model   = "a\qb" # want 15 bad-escape `Found "\\\\q"\. In double quotes write \\\\ for a backslash, \\" for a quote, \\n for a line break\.$`
  wall    = "2 mm" # want 3 unknown-key `Found "wall" in the car "Tessel 16"\. wall belongs to tube_stock and tube\.$`
}
