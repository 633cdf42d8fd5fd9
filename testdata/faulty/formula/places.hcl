rulebook "Marram" {
  edition = "2027"
}

chapter "4" {
  title = "Places and tubes"
  clause "4.1" {
    title   = "A place compared as a whole"
    concern = "safety"
    across  = "joint in cage.joints"
    demand  = "joint.at == cage.joint['A'].at" # want 16 formula-kind `Two places are never the same to the last digit\. Write distance\(joint\.at, cage\.joint\['A'\]\.at\) <= 1\*mm\.`
  }
  clause "4.2" {
    title   = "A place that is no figure"
    concern = "safety"
    across  = "joint in cage.joints"
    demand  = "joint.at >= 3*mm" # want 16 formula-kind `"joint\.at" is a place, which is no figure by itself\. Give it to distance, above or ahead_of, or read joint\.x, joint\.y and joint\.z\.`
  }
  clause "4.3" {
    title   = "A coordinate behind the place"
    concern = "safety"
    across  = "joint in cage.joints"
    demand  = "joint.at.z >= 300*mm" # want 25 formula-kind `"joint\.at" is a place; nothing follows it after a dot\. Write joint\.z\.`
  }
  clause "4.4" {
    title   = "All tubes at once"
    concern = "safety"
    across  = "head in heads"
    demand  = "distance(cage.tubes, head) >= 150*mm" # want 25 formula-kind `"cage\.tubes" is a list of tubes, where distance takes a place or a tube\. Ask its members one by one: any\(cage\.tubes, distance\(#, …\) …\), all\(cage\.tubes, distance\(#, …\) …\)\.`
  }
  clause "4.5" {
    title   = "A tube that is nowhere in particular"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "above(tube, head['driver']) >= 0" # want 22 formula-kind `"tube" is a tube, where above takes a place\. Ask the places along it: any\(tube\.corners, above\(#, …\) …\) or any\(tube\.ends, above\(#, …\) …\)\.`
  }
  clause "4.6" {
    title   = "A part with two places"
    concern = "safety"
    across  = "strap in harness['driver'].straps"
    demand  = "above(strap, seat['driver']) <= 0" # want 22 formula-kind `"strap" is a strap, where above takes a place\. Of its places name one: strap\.leaves_body or strap\.anchor_at\.`
  }
  clause "4.7" {
    title   = "A part without a place"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "distance(fuel_cell, tube) >= 100*mm" # want 25 formula-kind `"fuel_cell" is a fuel cell, where distance takes a place or a tube\. It can be a joint, a tube, a corner, an end, a foot, a gusset, a seat or a head\.`
  }
  clause "4.8" {
    title   = "The angle to a joint"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "angle_between(tube, cage.joint['A']) >= 30*deg" # want 36 formula-kind `"cage\.joint\['A'\]" is a joint, where angle_between takes a tube\. The least angle between tubes at a joint is cage\.joint\['A'\]\.least_angle\. Write a tube: one that across has named, one by its label as in cage\.tube\['…'\], or # in any\(cage\.tubes, angle_between\(#, …\) …\)\.`
  }
  clause "4.9" {
    title   = "A label instead of the part"
    concern = "safety"
    across  = "foot in cage.feet"
    demand  = "distance(foot.joint, cage.joint['A']) <= 100*mm" # want 25 formula-kind `"foot\.joint" is a text, where distance takes a place or a tube\. That is only the label of the joint; write foot, which stands for the place\.`
  }
  clause "4.10" {
    title   = "A label written out"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "any(tube.ends, distance(#, 'A left') <= 100*mm)" # want 43 formula-kind `'A left' is a text, where distance takes a place or a tube\. Write cage\.joint\['A left'\]\.`
  }
  clause "4.11" {
    title   = "How near is left out"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "meet(tube, cage.tube['2'])" # want 16 formula-arguments `meet has 2 arguments here\. Write meet\(tube, tube, within\)\.`
  }
  clause "4.12" {
    title   = "How near without a unit"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "meet(tube, cage.tube['2'], 5)" # want 43 formula-dimension `"5" has no unit, but meet takes a length\. Write 5\*mm\.`
  }
  clause "4.13" {
    title   = "A tube and itself"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "all(cage.tubes, distance(tube, tube) > 0)" # want 32 formula-arguments `Both are "tube"\. Name two: distance\(a, b\)\.`
  }
  clause "4.14" {
    title   = "The names of joints"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "tube.through contains 'A'" # want 16 formula-kind `"tube\.through" names joints, which are no value by themselves\. Ask tube\.corners, tube\.ends or meet\(tube, …\) instead, or recorded\(tube\.through\) whether they are on the sheet\.`
  }
  clause "4.15" {
    title   = "An angle taken for a length"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "angle_between(tube, cage.tube['2']) >= 30*mm" # want 16 formula-dimension `"angle_between\(tube, cage\.tube\['2'\]\)" is an angle, "30\*mm" is a length\. Only figures of one kind can be compared\. Did you mean 30\*deg\?`
  }
  clause "4.16" {
    title   = "A name that is a function"
    concern = "safety"
    across  = "joint in cage.joints"
    demand  = "let above = joint.z; above > 0" # want 20 formula-reserved `"above" is a function\. Choose another name\.`
  }
  clause "4.17" {
    title   = "A place by another name"
    concern = "safety"
    across  = "joint in cage.joints"
    demand  = "let crown = head['driver'].top; distance(joint, crown) > 0" # want 28 formula-kind `"head\['driver'\]\.top" is a place, which is no figure by itself\. Give it to distance, above or ahead_of, or read head\['driver'\]\.top_x, head\['driver'\]\.top_y and head\['driver'\]\.top_z\.`
  }
  clause "4.31" {
    title   = "A helmet that is no place"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "clearance(tube, helmet) >= 50*mm" # want 32 formula-name `"helmet" is not the name of a place\. Write head\['driver'\]: for distance the top point of a helmet, for clearance the helmet\.`
  }
  clause "4.32" {
    title   = "A helmet of the crew"
    concern = "safety"
    across  = "person in crew_members"
    demand  = "any(cage.tubes, clearance(#, person.helmet) >= 50*mm)" # want 45 formula-kind `"person\.helmet" is a helmet, where clearance takes a place or a tube\. Write head\['driver'\]: for distance the top point of a helmet, for clearance the helmet\.`
  }
  clause "4.33" {
    title   = "The back of a seat"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "distance(tube, seat_back) >= 50*mm" # want 31 formula-name `"seat_back" is not the name of a place\. Of a seat the sheet has one place, its reference: write seat\['driver'\]\.`
  }
  clause "4.34" {
    title   = "A joint of nothing"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "distance(tube, joint['A left']) >= 50*mm" # want 31 formula-name `"joint" does not say what it belongs to\. Write cage\.joint\['A left'\]\.`
  }
  clause "4.35" {
    title   = "Degrees by their sign"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "tube.angle_to_vertical >= 10°" # want 44 formula-syntax `The character "°" has no meaning in a formula\. Write 10\*deg; a temperature is celsius\(10\)\.`
  }
  clause "4.36" {
    title   = "Millimetres of angle"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "30*mm <= tube.angle_to_vertical" # want 16 formula-dimension `"30\*mm" is a length, "tube\.angle_to_vertical" is an angle\. Only figures of one kind can be compared\. Did you mean 30\*deg\?`
  }
  clause "4.37" {
    title   = "The angle to the ends"
    concern = "safety"
    demand  = "any(cage.tubes, angle_between(#, #.ends) >= 30*deg)" # want 49 formula-kind `"#\.ends" is a list of ends, where angle_between takes a tube\. Write a tube: one that across has named, one by its label as in cage\.tube\['…'\], or # in any\(cage\.tubes, angle_between\(#, …\) …\)\.`
  }
  clause "4.38" {
    title   = "Straps of nobody"
    concern = "safety"
    demand  = "all(straps, .width >= 70*mm)" # want 20 formula-name `"straps" does not say what it belongs to\. Write harness\['driver'\]\.straps, or fuel_cell\.straps if that is meant\.`
  }
}

term "apex" {
  means = "head['driver'].top" # want 12 formula-kind `"head\['driver'\]\.top" is a place, which is no figure by itself\. Give it to distance, above or ahead_of, or read head\['driver'\]\.top_x, head\['driver'\]\.top_y and head\['driver'\]\.top_z\.`
}
term "meet" { # want 6 name-taken `Found "meet" as name of a term\. It is a function in every formula\. Choose another name\.`
  means = "true"
}
table "ahead_of" { # want 7 name-taken `Found "ahead_of" as name of a table\. It is a function in every formula\. Choose another name\.`
  columns = { wall = "tube.wall" }
  rows    = [["2 mm"]]
}
