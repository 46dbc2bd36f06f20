using WitherAdvisor.Coefficients;
using WitherAdvisor.Recalibration.Report;

namespace WitherAdvisor.Words.Learning;

/// <summary>What was learned of a coefficient, as a maker would say it.</summary>
public static class LearnedWording
{
    public static string Sentence(Wordbook words, CoefficientLearning learned) =>
        Sentence(words, learned.Name, learned.Before, learned.After, learned.Identifiability);

    /// <summary>Of a coefficient in the model's own unit.</summary>
    public static string Sentence(Wordbook words, string coefficient, double before, double after, Identifiability told) => told switch
    {
        Identifiability.NotIdentified => words.Say("learning.not_identified", ("subject", Subject(words, coefficient))),
        Identifiability.Partly => words.Say("learning.partly", ("change", Change(words, coefficient, before, after))),
        _ => Change(words, coefficient, before, after),
    };

    /// <summary>What a coefficient is of.</summary>
    internal static string Subject(Wordbook words, string coefficient) => words[$"learning.subject.{Code(coefficient)}"];

    private static string Change(Wordbook words, string coefficient, double before, double after) => coefficient switch
    {
        nameof(WitherCoefficients.TurnBlend) =>
            words.Say("learning.change.turn_blend", ("after", $"{after:0%}"), ("before", $"{before:0%}")),
        nameof(WitherCoefficients.SurfaceRetention) => after < before
            ? words.Say("learning.change.surface_retention.too_high", ("share", $"{before / after - 1:0%}"))
            : words.Say("learning.change.surface_retention.too_low", ("share", $"{1 - before / after:0%}")),
        nameof(WitherCoefficients.DroughtMoistureWetBasis) =>
            words.Say("learning.change.drought_moisture", ("after", $"{after:0.0%}"), ("before", $"{before:0.0%}")),
        nameof(WitherCoefficients.DroughtToWetMoistureGain) =>
            words.Say("learning.change.drought_to_wet_gain", ("after", $"{100 * after:0.0}"), ("before", $"{100 * before:0.0}")),
        _ => after / before >= 1
            ? words.Say($"learning.change.{Code(coefficient)}.more", ("share", $"{after / before - 1:0%}"))
            : words.Say($"learning.change.{Code(coefficient)}.less", ("share", $"{1 - after / before:0%}")),
    };

    private static string Code(string coefficient) => coefficient switch
    {
        nameof(WitherCoefficients.CuticularConductanceMPerS) => "cuticular_conductance",
        nameof(WitherCoefficients.BoundaryLayerConductanceMPerS) => "boundary_layer_conductance",
        nameof(WitherCoefficients.SurfaceCapacityKgPerKg) => "surface_capacity",
        nameof(WitherCoefficients.TurnBlend) => "turn_blend",
        nameof(WitherCoefficients.AirflowFactor) => "airflow",
        nameof(WitherCoefficients.SurfaceRetention) => "surface_retention",
        nameof(WitherCoefficients.DroughtMoistureWetBasis) => "drought_moisture",
        nameof(WitherCoefficients.DroughtToWetMoistureGain) => "drought_to_wet_gain",
        _ => throw new ArgumentOutOfRangeException(nameof(coefficient), coefficient, "No words for this coefficient."),
    };
}
