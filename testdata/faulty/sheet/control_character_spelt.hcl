car "Tessel 16" {
  chassis = "TS\u001b[31m" # want 16 control-character `Found the invisible character U\+001B\. Take it out\.$`
 note = "\u202e" # want 10 control-character `Found the invisible character U\+202E\. Take it out\.$`
}
tube "\u0007" {} # want 7 control-character `Found the invisible character U\+0007\. Take it out\.$`
