using Microsoft.AspNetCore.Components;
using WitherAdvisor.Fields;
using WitherAdvisor.Words;

namespace WitherAdvisor.Api.Pages.Forms;

/// <summary>What a field may hold and what is wrong with it, in the words of a page. Names of fields and choices stay as they are.</summary>
internal static class AllowedWording
{
    public static MarkupString Of(Wordbook words, Shape shape) => new(shape switch
    {
        NumberShape { Whole: true } number => words.Html("allowed.whole_number", ("least", number.Least), ("most", number.Most), ("unit", number.Unit ?? "")).TrimEnd(),
        NumberShape number => words.Html("allowed.number", ("least", number.Least), ("most", number.Most), ("unit", number.Unit ?? "")).TrimEnd(),
        ChoiceShape choice => words.Html("allowed.choice", ("names", string.Join(", ", choice.Names))),
        InstantShape => words.Html("allowed.time", ("first", InstantShape.FirstYear), ("last", InstantShape.LastYear)),
        TextShape text => words.Html("allowed.text", ("longest", text.Longest)),
        ListShape list => words.Html("allowed.list", ("fewest", list.Fewest), ("most", list.Most)),
        _ => throw new ArgumentOutOfRangeException(nameof(shape), shape, "No words for this shape."),
    });

    /// <summary>What is wrong; null where only the interface has words for it, in English.</summary>
    public static MarkupString? Of(Wordbook words, FieldError error) => error.Expected is not { } shape || shape is ObjectShape ? null : new(
        (error.Given is { } given
            ? words.Html("field_error.given", ("field", error.Field), ("given", given))
            : words.Html("field_error.missing", ("field", error.Field)))
        + " " + Of(words, shape));
}
