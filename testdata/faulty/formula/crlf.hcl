rulebook "Marram" {
  edition = "2027"
}

chapter "4" {
  title = "Lines that end as on another system"
  clause "4.1" {
    title   = "Quoted"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "tube.outside >= 45*mm and tube.wal >= 2.5*mm" # want 47 formula-name `The build sheet knows no "wal" of a tube\. Did you mean wall\?`
  }
  clause "4.2" {
    title   = "In a heredoc"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = <<-FORMULA
      tube.outside >= 45*mm
      and tube.wal >= 2.5*mm
    FORMULA
    # want@-2 16 formula-name `The build sheet knows no "wal" of a tube\. Did you mean wall\?`
  }
}
