car "Tessel 16" {} # want 1 not-a-season `Found a build sheet where a season is wanted\. Name the file or folder that holds the season block, and give the build sheet as the first argument\.$`
tube "1" {}
