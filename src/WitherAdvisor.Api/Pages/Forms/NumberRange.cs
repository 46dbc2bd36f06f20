using WitherAdvisor.Words;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.Pages.Forms;

/// <summary>What a number may be, in the model's unit and in the person's.</summary>
/// <param name="Low">Least, in the model's unit.</param>
/// <param name="High">Most, in the model's unit.</param>
/// <param name="Unit">The person's unit, as written.</param>
/// <param name="ToModelUnit">From the person's unit to the model's.</param>
/// <param name="FromModelUnit">And back.</param>
public sealed record NumberRange(
    double Low, double High, string Unit, Func<double, double> ToModelUnit, Func<double, double> FromModelUnit)
{
    /// <summary>Bounds are shown rounded, and a bound typed as it is shown must pass.</summary>
    private const int DecimalsShown = 1;

    public string Allowed(Wordbook words) => words.Say("form.allowed_range", ("low", Shown(Low)), ("high", Shown(High)), ("unit", Unit));

    public static NumberRange Plain(double low, double high, string unit) =>
        new(low, high, unit, given => given, model => model);

    /// <summary>A fraction in the model, typed as a percentage.</summary>
    public static NumberRange Percent(double low, double high, string unit) =>
        new(low, high, unit, given => given / 100, model => model * 100);

    public static NumberRange Temperature(double lowC, double highC, PersonUnits units) =>
        new(lowC, highC, units.DegreeSymbol, units.Celsius, units.Degrees);

    public static NumberRange Weight(double lowKg, double highKg, PersonUnits units) =>
        new(lowKg, highKg, units.WeightSymbol, units.Kilograms, units.WeightFromKg);

    /// <summary>In the model's unit; null where it is out of range.</summary>
    public double? ToModel(double given) =>
        given < Bound(Low) || given > Bound(High) ? null : Math.Clamp(ToModelUnit(given), Low, High);

    private double Bound(double model) => Math.Round(FromModelUnit(model), DecimalsShown);

    private string Shown(double model) => Bound(model).ToString("0.#").Replace('-', '−');
}
