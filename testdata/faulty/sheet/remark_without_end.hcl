car "Tessel 16" {}
/* This goes on.
# want@-1 1 not-closed "nowhere a .. after it"
