using System.Text;

namespace WitherAdvisor.SyntheticSeasons;

/// <summary>The reliability tables as a document.</summary>
public static class ReliabilityDocument
{
    private const int OtherTruthsAreOneIn = 3;

    public static string Make(int batches)
    {
        var text = new StringBuilder();
        text.AppendLine("""
            # Does the ready time hold?

            Written by `dotnet run -c Release --project tests/tools/WitherAdvisor.SyntheticSeasons`.

            Each batch is invented: 66 days of weather made of dry windy, ordinary and wet spells; a loft with coefficients, airflow
            and fields of its own, drawn about the defaults; readings that err, with holes; a forecast that errs; sometimes a
            sample weighed, oven-dried or felt. The service is asked for advice and the loft follows it, holding the advised
            hygrometric differences to 0.4 K. Then the true leaf dries in the true air. Between P10 and P90 eight of ten such batches
            should be ready.

            It tests whether the stated errors add up to the stated band, whatever their path. It can't test whether
            the stated errors are those of a real loft: they are from memory, and a site's own outcomes are to replace them.

            ## Truth as far from the defaults as they say

            """);
        text.Append(Reliability.Of(batches).Table());
        text.AppendLine("\n## Parts of the weather withheld\n\nThe same batches; nobody tells the service of a part of their weather, read or forecast.\n");
        text.AppendLine(Reliability.Head);
        foreach (Withheld withheld in (Withheld[])[Withheld.Sun, Withheld.Wind, Withheld.SunAndWind, Withheld.HalfOfRain])
        {
            text.Append(Reliability.Of(batches, withheld: withheld).Row($"without {withheld.Name}"));
        }

        text.AppendLine("\n## g_0 off by 40 % in every loft\n\nBy a factor of 1.4 one way or the other, as much as a loft without outcomes is taken to be off by.\n");
        text.AppendLine(Reliability.Head);
        text.Append(Reliability.Of(batches, skinOff: Math.Log(1.4)).Row("g_0 off by 40 %"));
        text.AppendLine("\n## Truth half as far again\n\nA site that differs more than the defaults allow for; the band is then too narrow, as it should show.\n");
        text.Append(Reliability.Of(batches / OtherTruthsAreOneIn, wider: 1.5).Table());
        text.AppendLine("\n## Truth half as far\n\nA site that the defaults fit well; the band is then wider than it need be.\n");
        text.Append(Reliability.Of(batches / OtherTruthsAreOneIn, wider: 0.5).Table());
        return text.ToString();
    }
}
