using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Leaf;
using Domain = WitherAdvisor.Loft.Intake.LotWarning;

namespace WitherAdvisor.Api.Batches;

/// <summary>Warnings of lots that would mix, as answers.</summary>
internal static class LotWarningMapping
{
    public static LotWarning ToResponse(Domain warning) => new()
    {
        Code = Code(warning),
        OtherBatch = Other(warning)?.Id,
        Text = LotWarningWording.Sentence(Wordbook.English, warning),
    };

    private static string Code(Domain warning) => warning switch
    {
        Domain.HoldsAnotherBatch => "holds_another_batch",
        Domain.HoldsAnotherLabel => "holds_another_label",
        Domain.MixesBushAges => "mixes_bush_ages",
        Domain.MixesCultivars => "mixes_cultivars",
        Domain.MixesLeafStandards => "mixes_leaf_standards",
        Domain.LoadOverMost => "load_over_most",
        _ => throw new ArgumentOutOfRangeException(nameof(warning), warning, "No code for this warning."),
    };

    private static StoredBatch? Other(Domain warning) => warning switch
    {
        Domain.HoldsAnotherBatch holds => holds.Other,
        Domain.HoldsAnotherLabel holds => holds.Other,
        Domain.MixesBushAges mixes => mixes.Other,
        Domain.MixesCultivars mixes => mixes.Other,
        Domain.MixesLeafStandards mixes => mixes.Other,
        _ => null,
    };
}
