namespace WitherAdvisor.Api.ModelCard;

/// <summary>What the committed reliability table says of all its batches.</summary>
/// <param name="Batches">How many were invented and had a plan.</param>
/// <param name="HeldPercent">How many of them were ready between P10 and P90.</param>
/// <param name="HeldIfFurtherPercent">The same where the truth lay half as far again from the defaults as the spreads say.</param>
internal sealed record StatedReliability(int Batches, double HeldPercent, double HeldIfFurtherPercent)
{
    private const int NumberColumn = 2;
    private const int HeldColumn = 4;

    public static StatedReliability Committed { get; } = Read(CardFile.Read("RELIABILITY.md"));

    private static StatedReliability Read(string document)
    {
        string[][] all =
        [
            .. document.Split('\n').Where(line => line.StartsWith("| all |", StringComparison.Ordinal)).Select(line => line.Split('|')),
        ];
        return new(int.Parse(all[0][NumberColumn]), double.Parse(all[0][HeldColumn]), double.Parse(all[1][HeldColumn]));
    }
}
