crew "A. Penrith-Vale" { # want 1 season-missing `Found no season block\. Write one: season "2027" \{ event "NAME" \{ first_day = "2027-03-13" … \} \}\.$`
  helmet { standard = "FIA 8859-2015" }
}
