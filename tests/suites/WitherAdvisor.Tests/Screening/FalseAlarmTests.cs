using System.Globalization;
using Xunit;

namespace WitherAdvisor.Tests.Screening;

public sealed class FalseAlarmTests
{
    private const double MostPerYear = 1;

    private static readonly string Document = Path.Combine(RepositoryFiles.Root, "src", "WitherAdvisor", "Screening", "FALSE-ALARMS.md");

    [Fact]
    public void No_rule_accuses_real_weather_more_than_once_a_year()
    {
        string document = FalseAlarms.Document();
        if (Environment.GetEnvironmentVariable("UPDATE_FALSE_ALARMS") == "1")
        {
            File.WriteAllText(Document, document);
        }

        double[] perYear =
        [
            .. document.Split('\n').Where(line => line.StartsWith("| airport", StringComparison.Ordinal) || line.StartsWith("| Seattle", StringComparison.Ordinal))
                .SelectMany(line => line.Trim('|', '\r').Split('|').Skip(1)).Where(cell => cell.Trim().Length > 0)
                .Select(cell => double.Parse(cell, CultureInfo.InvariantCulture)),
        ];
        Assert.Equal(4 * FalseAlarms.Codes.Count, perYear.Length);
        Assert.All(perYear, alarms => Assert.InRange(alarms, 0, MostPerYear));
        Assert.Equal(File.ReadAllText(Document), document);
    }
}
