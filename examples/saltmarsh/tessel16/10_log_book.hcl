# What travels with the car: notes of its log book, what inspections said of it, what it hit,
# and what the club has let it off.

# Put right and struck out: closed.
logbook_note "L1" {
  day        = "2027-01-22"
  clause     = "10.8"
  text       = "The breather's valve does not shut."
  before     = "2027-03-13"
  fixed      = "2027-02-06"
  cleared_on = "2027-02-27"
  cleared_by = "O. Marram"
}

# Open. It is a gap until an inspector has struck it out, and more so after its last day.
logbook_note "L2" {
  day    = "2027-02-27"
  clause = "10.12"
  text   = "Seam of the bulkhead to the tank opened by the new hose."
  before = "2027-06-11"
}

# The club's own reading of a tube that the joints alone do not prove.
inspection "I1" {
  day              = "2027-02-27"
  clause           = "4.9"
  subject          = "tube 5"
  outcome          = "noted"
  their_reading    = "29.7 deg"
  their_instrument = "angle gauge"
  note             = "read at the middle of the tube, and to be read again at the first event"
}

# Loaded once, looked at since, so the seat counts by its label again.
incident "bales" {
  day          = "2027-02-13"
  hit          = "slid into straw bales on the test day, left side, at walking pace"
  loaded       = ["seat driver"]
  inspected    = "2027-02-20"
  inspected_by = "O. Marram"
}

# Good for the first two events. From the third on the flap is a gap, unless the bracket is
# made by then.
dispensation "2027/2" {
  clause     = "13.3"
  subject    = "mud_flap rear right"
  granted_by = "Committee of the rules"
  reference  = "2027/2"
  chassis    = "TS-0417"
  log_book   = "SM 0388"
  from       = "2027-03-08"
  until      = "2027-06-30"
  reason     = "The tank guard's new corner stands where the flap hung."
  condition  = "car.ground_clearance >= 160*mm"
}
