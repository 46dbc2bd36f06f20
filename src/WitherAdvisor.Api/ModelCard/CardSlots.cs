using WitherAdvisor.Coefficients;
using WitherAdvisor.Documentation;
using WitherAdvisor.Loft.Advising;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Model;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.ModelCard;

/// <summary>What the gaps in the card's text are filled with.</summary>
internal static class CardSlots
{
    private const string Summary = "summary:";

    public static string Fill(string slot) => slot switch
    {
        "version" => ModelVersion.Current,
        "set" => new WitherCoefficients().SetName,
        "cases" => Constant("cases"),
        "airflow" => Constant("airflow"),
        "batches" => $"{StatedReliability.Committed.Batches}",
        "held" => $"{StatedReliability.Committed.HeldPercent}\u00a0%",
        "held_further" => $"{StatedReliability.Committed.HeldIfFurtherPercent}\u00a0%",
        "unknowns" => string.Join('\n', Unknown.All.Select(unknown => $"- {UnknownWording.Text(unknown.Code)}")),
        "ranges" => CardTables.Ranges(),
        "equations" => CardTables.Equations(),
        "coefficients" => CardTables.Coefficients(),
        "constants" => CardTables.Constants(),
        "checks" => CardTables.Checks(),
        _ when slot.StartsWith(Summary, StringComparison.Ordinal) =>
            SensitivitySummary.Of(Wordbook.English, CardBatch.All.Single(batch => batch.Id == slot[Summary.Length..]).Sensitivity),
        _ => throw new InvalidDataException($"The model card has a gap that nothing fills: {slot}."),
    };

    private static string Constant(string code)
    {
        ModelConstant constant = ModelConstants.All.Single(constant => constant.Code == code);
        return ShownNumber.Of(constant.Value, constant.Unit).Text;
    }
}
