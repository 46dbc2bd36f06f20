using WitherAdvisor.Advice;
using WitherAdvisor.Api.Advice;
using WitherAdvisor.Api.Demo;
using WitherAdvisor.Sensitivities;

namespace WitherAdvisor.Api.ModelCard;

/// <summary>An invented batch that shows what matters most in its weather.</summary>
/// <param name="Id">As the invented estate names it.</param>
/// <param name="Title">For people.</param>
/// <param name="Sensitivity">From the model, reckoned as for any advice.</param>
internal sealed record CardBatch(string Id, string Title, Sensitivity Sensitivity)
{
    /// <summary>One of rain, one of a dry windy spell.</summary>
    public static IReadOnlyList<CardBatch> All { get; } =
    [
        Of("rain-wet", "Leaf after days of rain"),
        Of("dry-windy", "Leaf from a dry windy spell"),
    ];

    private static CardBatch Of(string id, string title)
    {
        AdviceRequest request = AdviceRequestMapping.ToDomain(InventedAdvice.Input(id)).Request;
        return new(id, title, SensitivityAnalysis.Of(request)
            ?? throw new InvalidDataException($"No plan is advised for the invented batch {id}."));
    }
}
