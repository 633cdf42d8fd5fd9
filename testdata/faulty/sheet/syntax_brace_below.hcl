car "Tessel 16"
{
}
# want@-3 16 line-not-understood `The line ends here\. A block begins name "label" \{ with the \{ on the same line; a value is written name = value\. Nothing else in the file was looked at: mend th(is|ese) first, more may follow\.$`
