car "Tessel 16" {
  evidence "form" { file = "papers/form.pdf" } # warn 28 evidence-missing `Found "papers/form\.pdf" as file of the evidence "form", but there is no such file in the sheet's folder\. Put it there, or mend the path\.$`
}
evidence "all" { file = "in_two_files" } # warn 25 evidence-missing `Found "in_two_files" as file of the evidence "all", but it is a folder or something else that is no file\. Put it there, or mend the path\.$`
