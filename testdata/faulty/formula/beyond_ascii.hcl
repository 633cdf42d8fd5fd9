rulebook "Marram" {
  edition = "2027"
}

chapter "4" {
  title = "Überrollkäfig, 安全, 🏁"
  clause "4.1" {
    title   = "Composed and decomposed letters, and signs of two columns"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "tube.stock == 'é é ⌀ 🏁' and tube.wal >= 2.5*mm" # want 49 formula-name `The build sheet knows no "wal" of a tube\. Did you mean wall\?`
  }
  clause "4.2" {
    title   = "In a heredoc"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = <<-FORMULA
      tube.stock != 'Rückstrebe é' and
      tube.größe >= 2.5*mm
    FORMULA
    # want@-2 12 formula-name `The build sheet knows no "größe" of a tube\. There are: angle_to_horizontal, angle_to_vertical, bend_radius, .* and others\.`
  }
  clause "4.3" {
    title   = "Escaped letters"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "tube.stock == '\u00e9\U0001F3C1' and tube.wal >= 2.5*mm" # want 58 formula-name `The build sheet knows no "wal" of a tube\. Did you mean wall\?`
  }
}
