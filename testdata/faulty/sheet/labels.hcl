car {} # want 1 label-count `Found car without a label\. Write car "NAME" \{\.$`
tube {} # want 1 label-count `Found tube without a label\. Write tube "1" \{\.$`
cage "big" {} # want 6 label-count `Found "big" behind cage\. There can be one only, which has no label: write cage \{\.$`
tube "1" "2" {} # want 10 label-count `Found "2" as second label\. Write one in double quotes: tube "1" \{\.$`
harness "drivers" {} # want 9 unknown-label `Found "drivers" as label of a harness\. Did you mean "driver"\? Write one of "driver" or "co-driver"\.$`
tube "" {} # want 6 text-empty `The label of the tube is empty\. Write what it is called\.$`
tube "a\nb" {} # want 6 one-line-wanted `The label of the tube has several lines\. Write it on one\.$`
seat driver {}
evidence {} # want 1 label-count `Found 0 names of the evidence\. Write one in double quotes, as in evidence "material certificate" \{\.$`
club {} # want 1 label-count `Found 0 names behind club\. Write the name of the rulebook: club "NAME OF THE RULES" \{\.$`
mirror "middle" {} # want 8 unknown-label `Found "middle" as label of a mirror\. Write one of "left", "right" or "inside"\.$`
