using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.HttpResults;
using WitherAdvisor.Api.Pages.Sheet;
using Xunit;

namespace WitherAdvisor.Api.Tests.Pages;

public sealed class StyleSheetTests
{
    private static readonly string Sheet = Encoding.UTF8.GetString(
        Assert.IsType<FileContentHttpResult>(StyleSheet.Show(new DefaultHttpContext().Response)).FileContents.Span);

    [Fact]
    public void The_address_changes_with_the_content_so_that_it_may_be_kept_for_ever()
    {
        DefaultHttpContext http = new();
        _ = StyleSheet.Show(http.Response);

        Assert.Matches("^/pages-[0-9a-f]{12}\\.css$", StyleSheet.Address);
        Assert.Contains("immutable", http.Response.Headers.CacheControl.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_is_loaded_from_elsewhere() => Assert.DoesNotMatch("(?i)url\\(|@import", Sheet);

    // WCAG 2.2, success criteria 1.4.6 (text, enhanced: 7:1), 1.4.3 (text: 4.5:1) and 1.4.11 (graphics: 3:1).
    [Theory]
    [InlineData("light", "ink", "paper", 7)]
    [InlineData("light", "ink", "card", 7)]
    [InlineData("light", "ink", "wash", 7)]
    [InlineData("light", "soft", "paper", 4.5)]
    [InlineData("light", "soft", "card", 4.5)]
    [InlineData("light", "soft", "wash", 4.5)]
    [InlineData("light", "pencil", "paper", 7)]
    [InlineData("light", "on-pencil", "pencil", 7)]
    [InlineData("light", "alert", "paper", 4.5)]
    [InlineData("light", "ink", "alert-wash", 7)]
    [InlineData("light", "bottom", "paper", 4.5)]
    [InlineData("light", "middle", "paper", 4.5)]
    [InlineData("light", "top", "paper", 4.5)]
    [InlineData("light", "water", "paper", 3)]
    [InlineData("dark", "ink", "paper", 7)]
    [InlineData("dark", "ink", "card", 7)]
    [InlineData("dark", "ink", "wash", 7)]
    [InlineData("dark", "soft", "paper", 4.5)]
    [InlineData("dark", "soft", "card", 4.5)]
    [InlineData("dark", "soft", "wash", 4.5)]
    [InlineData("dark", "pencil", "paper", 7)]
    [InlineData("dark", "on-pencil", "pencil", 7)]
    [InlineData("dark", "alert", "paper", 4.5)]
    [InlineData("dark", "ink", "alert-wash", 7)]
    [InlineData("dark", "bottom", "paper", 4.5)]
    [InlineData("dark", "middle", "paper", 4.5)]
    [InlineData("dark", "top", "paper", 4.5)]
    [InlineData("dark", "water", "paper", 3)]
    public void Ink_stands_out_from_what_it_lies_on(string scheme, string ink, string ground, double least)
    {
        string block = scheme == "light" ? Sheet[..Sheet.IndexOf("@media", StringComparison.Ordinal)] : Sheet[Sheet.IndexOf("prefers-color-scheme: dark", StringComparison.Ordinal)..];

        Assert.True(Contrast(Colour(block, ink), Colour(block, ground)) >= least);
    }

    private static string Colour(string block, string name) =>
        Regex.Match(block, $"--{name}: #([0-9a-f]{{6}});", RegexOptions.NonBacktracking).Groups[1].Value;

    // WCAG 2.2, "contrast ratio" and "relative luminance".
    private static double Contrast(string one, string other)
    {
        (double a, double b) = (Luminance(one), Luminance(other));
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    private static double Luminance(string colour)
    {
        double[] parts = [.. Enumerable.Range(0, 3).Select(i => int.Parse(colour.AsSpan(2 * i, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0)
            .Select(part => part <= 0.04045 ? part / 12.92 : Math.Pow((part + 0.055) / 1.055, 2.4))];
        return 0.2126 * parts[0] + 0.7152 * parts[1] + 0.0722 * parts[2];
    }
}
