using WitherAdvisor.Loft.Intake;

namespace WitherAdvisor.Words.Leaf;

/// <summary>Leaf that should be kept apart, in words.</summary>
public static class LotWarningWording
{
    public static string Sentence(Wordbook words, LotWarning warning) => warning switch
    {
        LotWarning.HoldsAnotherBatch holds => words.Say(
            "lot_warning.holds_another_batch",
            ("trough", holds.TroughId), ("division", holds.Other.Batch.Label.Division), ("field", holds.Other.Batch.Label.Field)),
        LotWarning.HoldsAnotherLabel holds => words.Say(
            "lot_warning.holds_another_label",
            ("trough", holds.TroughId), ("division", holds.Other.Batch.Label.Division), ("field", holds.Other.Batch.Label.Field)),
        LotWarning.MixesBushAges => words["lot_warning.mixes_bush_ages"],
        LotWarning.MixesCultivars mixes => words.Say("lot_warning.mixes_cultivars", ("coming", mixes.Coming), ("lying", mixes.Lying)),
        LotWarning.MixesLeafStandards => words["lot_warning.mixes_leaf_standards"],
        LotWarning.LoadOverMost load => words.Say(
            "lot_warning.load_over_most", ("together", $"{load.TogetherKg:0.#}"), ("trough", load.TroughId), ("most", $"{load.MostKg:0.#}")),
        _ => throw new ArgumentOutOfRangeException(nameof(warning), warning, "No words for this warning."),
    };
}
