car "Tessel 16"
{
}
# want@-3 16 line-not-understood `The line ends here\. A block begins name "label" \{ with the \{ on the same line; a value is written name = value\.$`
