rulebook { # want 1 label-count "The rulebook has no name" 1 key-missing `The rulebook has no edition\. Write edition = "2027"\.`
  editon   = "2027"                 # want 3 unknown-key `Found editon in the rulebook\. Did you mean edition\?`
  in_force = "2027-02-30"           # want 23 date-no-such-day ""
  judged   = "as-read"              # want 14 unknown-word `Did you mean "as read"\? Write one of: as read or proved\.`
  readings = "median"               # want 14 unknown-word `Write one of: least favourable or mean\.`
  standing = ""                     # want 14 text-empty "The standing of the rulebook is empty"
  classes  = ["open", "Open ", 5]   # want 23 said-twice `Found "Open " again` 32 text-wanted "number"
  class "closed" {}                 # want 3 classes-twice `Write every class as a block, or all in the list\.`
  chapter "1" {}                    # want 3 unknown-block `Found chapter in the rulebook\.`
}
