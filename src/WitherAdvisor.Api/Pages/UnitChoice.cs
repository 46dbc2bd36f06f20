using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.Pages;

/// <summary>A person's choice of units: in the address when they choose, in a cookie from then on.</summary>
public static class UnitChoice
{
    public const string ScaleName = "temperature";
    public const string WeightName = "weight";
    private const int DaysKept = 400;

    /// <summary>As an address, a cookie or a hidden field holds it.</summary>
    public static string Code(TemperatureScale scale) => scale == TemperatureScale.Celsius ? "c" : "f";

    /// <summary>As an address, a cookie or a hidden field holds it.</summary>
    public static string Code(WeightUnit weight) => weight == WeightUnit.Kilogram ? "kg" : "lb";

    /// <summary>The choice of the one who asks; kept in a cookie where the address makes it.</summary>
    public static PersonUnits Read(HttpContext http)
    {
        PersonUnits kept = With(PersonUnits.Usual, name => http.Request.Cookies[name]);
        PersonUnits chosen = With(kept, name => http.Request.Query[name]);
        if (chosen != kept)
        {
            Keep(http, ScaleName, Code(chosen.Scale));
            Keep(http, WeightName, Code(chosen.Weight));
        }

        return chosen;
    }

    /// <summary>Units with those that <paramref name="said"/> names in place of the others.</summary>
    public static PersonUnits With(PersonUnits units, Func<string, string?> said) => new(
        said(ScaleName) switch { "c" => TemperatureScale.Celsius, "f" => TemperatureScale.Fahrenheit, _ => units.Scale },
        said(WeightName) switch { "kg" => WeightUnit.Kilogram, "lb" => WeightUnit.Pound, _ => units.Weight });

    internal static void Keep(HttpContext http, string name, string value) =>
        http.Response.Cookies.Append(name, value, new CookieOptions
        {
            HttpOnly = true,
            SameSite = SameSiteMode.Lax,
            Secure = http.Request.IsHttps,
            MaxAge = TimeSpan.FromDays(DaysKept),
        });
}
