namespace WitherAdvisor.Api.ModelCard;

/// <summary>A stretch of the card: words, or a picture of what matters most.</summary>
internal abstract record CardPart
{
    /// <summary>Words and tables.</summary>
    public sealed record Text(string Markdown) : CardPart;

    /// <summary>The place of a batch's picture.</summary>
    public sealed record Picture(CardBatch Batch) : CardPart;
}
