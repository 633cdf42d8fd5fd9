package vehicle

import (
	"fmt"

	"github.com/hashicorp/hcl/v2/hclsyntax"
)

// classList is the name under which the classes of the rulebook in use stand.
const classList = "classes of the rulebook"

// choice reads the choices of a particular: the name of a declared list, a list of texts,
// or value blocks.
func (k *keys) choice(x *Particular, v *Vocabulary) {
	_, plain := k.value("choices").(*hclsyntax.TupleConsExpr)
	given := k.block.Body.Attributes["choices"]
	if given != nil && !plain {
		k.declaredChoice(x, v)
		return
	}
	r := newListReader(k, x.Name)
	r.plain(k.texts("choices"))
	if blocks := k.inner("value"); given != nil && len(blocks) > 0 {
		k.fault("choices-twice", blocks[0].TypeRange, "Choices said in two ways",
			fmt.Sprintf("Found a value block beside the choices of the %s. Write every choice as a block, or all in the list.", k.what))
		return
	}
	r.blocks()
	x.Choices = r.done()
}

// declaredChoice reads the name of a list of choices.
func (k *keys) declaredChoice(x *Particular, v *Vocabulary) {
	t := k.text("choices")
	if FoldText(t.text) == classList && !k.added {
		x.Kind = KindText
		return
	}
	if x.Choices = v.choices(t.text); x.Choices != nil || t.text == "" {
		return
	}
	var known []string
	for _, list := range v.lists {
		known = append(known, list.Name)
	}
	advice := `Write choices = ["…", "…"], or a value "…" { } block for each.`
	if near := Nearest(t.text, known); near != "" {
		advice = fmt.Sprintf("Did you mean %q? %s", near, advice)
	}
	k.fault("choices-unknown", t.all, "Unknown list of choices", fmt.Sprintf("Found %s as choices of the %s. %s", Quote(t.text), k.what, advice))
}
