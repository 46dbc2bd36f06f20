namespace WitherAdvisor.Api.ModelCard;

/// <summary>A stretch of the card: words, or a picture of what matters most.</summary>
internal abstract record CardPart
{
    /// <param name="Markdown">Words and tables.</param>
    public sealed record Text(string Markdown) : CardPart;

    /// <param name="Batch">Whose picture stands here.</param>
    public sealed record Picture(CardBatch Batch) : CardPart;
}
