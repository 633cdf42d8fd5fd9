car "Tessel 16" {
  chassis = "TS[31m" # want 16 control-character `Found the invisible character U\+001B\. Take it out\.$`
}
