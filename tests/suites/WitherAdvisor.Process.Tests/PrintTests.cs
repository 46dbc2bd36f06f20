using System.Text;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using Xunit;

namespace WitherAdvisor.Process.Tests;

public sealed partial class PrintTests(Loft loft)
{
    [Fact]
    public async Task The_advice_prints_on_one_page_as_a_trough_card()
    {
        IPage page = await loft.OpenOnPhone();
        await BatchPages.EnterRainWetBatch(page);

        byte[] pdf = await page.PdfAsync(new() { Format = "A4" });

        Assert.Single(PdfPage().Matches(Encoding.Latin1.GetString(pdf)));
    }

    // Chromium writes its page objects uncompressed; /Type /Pages is the list of them.
    [GeneratedRegex(@"/Type\s*/Page\b(?!s)", RegexOptions.None, Patience.Milliseconds)]
    private static partial Regex PdfPage();
}
