using System.Text.RegularExpressions;
using WitherAdvisor.Words;

namespace WitherAdvisor.Api.ModelCard;

/// <summary>The model card: one text for the page and for the repository, its numbers and tables filled in from the program.</summary>
internal static partial class CardDocument
{
    private const string PictureSlot = "tornado:";

    /// <summary>In order. A page draws the pictures, a document writes them as tables.</summary>
    public static IReadOnlyList<CardPart> Parts { get; } = [.. Read()];

    /// <summary>The whole card as Markdown.</summary>
    public static string Markdown { get; } = string.Concat(Parts.Select(part => part switch
    {
        CardPart.Text text => text.Markdown,
        CardPart.Picture picture => TornadoTable.Of(Wordbook.English, picture.Batch.Sensitivity),
        _ => throw new InvalidOperationException("A part of no kind."),
    }));

    private static IEnumerable<CardPart> Read()
    {
        string template = CardFile.Read("model-card.md");
        string[] pieces = Picture().Split(template);
        string[] pictures = [.. Picture().Matches(template).Select(found => found.Groups["batch"].Value)];
        for (int i = 0; i < pieces.Length; i++)
        {
            // The pattern's group stands between the pieces.
            yield return i % 2 == 0
                ? new CardPart.Text(Slot().Replace(pieces[i], found => CardSlots.Fill(found.Groups["name"].Value)))
                : new CardPart.Picture(CardBatch.All.Single(batch => batch.Id == pictures[i / 2]));
        }
    }

    [GeneratedRegex(@"\{\{" + PictureSlot + @"(?<batch>[a-z-]+)\}\}", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Picture();

    [GeneratedRegex(@"\{\{(?<name>[a-z_:-]+)\}\}", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Slot();
}
