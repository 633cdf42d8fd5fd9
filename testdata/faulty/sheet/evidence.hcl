car "Tessel 16" {
  evidence "form" { file = "papers\\form.pdf" } # want 28 evidence-path `Found "papers\\\\form\.pdf" as file of the evidence "form"\. Write / between folders: "papers/form\.pdf"\.$`
  evidence "form 2" { file = "/home/form.pdf" } # want 30 evidence-path `Found "/home/form\.pdf" as file of the evidence "form 2"\. Write the path as seen from the sheet's folder, as in "papers/tube-A\.pdf"\.$`
  evidence "form 3" { file = "C:/form.pdf" } # want 30 evidence-path `Found "C:/form\.pdf" as file of the evidence "form 3"\. Write the path as seen from the sheet's folder, as in "papers/tube-A\.pdf"\.$`
  evidence "form 4" { file = "../form.pdf" } # want 30 evidence-path `Found "\.\./form\.pdf" as file of the evidence "form 4"\. It leads out of the sheet'.*nside, or name its folder with --papers\.$`
  evidence "form 5" { file = "papers/../../form.pdf" } # want 30 evidence-path `Found "papers/\.\./\.\./form\.pdf" as file of the evidence "form 5"\. It leads out of .*nside, or name its folder with --papers\.$`
  evidence "form 6" { dated = "14.3.2026" } # want 32 date-form `"14\.3\.2026" is not a dat`
  evidence "form 7" { file = 7 } # want 30 text-wanted `Found the number 7 where a text is wanted\. Write it in double quotes: "…"\.$`
  evidence "form 8" { fil = "form.pdf" } # want 23 unknown-key `Found fil in the evidence "form 8"\. Did you mean file\? It can have file, dated, valid_until, note\.$`
  evidence "form 9" { file = "evidence.hcl" }
  evidence "Form 9" { file = "./evidence.hcl" } # want 3 said-twice `Found evidence "Form 9" again; it was said first at evidence\.hcl:10:3\. Keep one of the two\.$`
  evidence "form 9" {}
  evidence "form 10" {
    photo {} # want 5 unknown-block `Found photo in the evidence "form 10"\. It can have file, dated, valid_until, note\.$`
  }
}
