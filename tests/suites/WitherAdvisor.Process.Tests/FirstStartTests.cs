using System.Net;
using System.Text.RegularExpressions;
using Xunit;

namespace WitherAdvisor.Process.Tests;

[Collection(Alone.Name)]
public sealed partial class FirstStartTests
{
    [Fact]
    public async Task A_first_start_prints_a_recommendation_and_names_its_page_and_a_second_does_not_repeat_it()
    {
        CancellationToken cancel = TestContext.Current.CancellationToken;
        using TemporaryFolder folder = new();
        await using (RunningService service = new(folder.Path))
        {
            await service.Start();
            await service.Prints("Pages: ");

            Assert.Matches(@"Set +plenum dry bulb \d", service.Printed);
            Assert.Matches(@"Turn +(every \d h|\d times): \d\d:\d\d", service.Printed);
            MatchCollection pages = BatchPage().Matches(service.Printed);
            Assert.Equal(3, pages.Count);
            using HttpResponseMessage page = await service.Http.GetAsync(new Uri(pages[0].Value), cancel);
            Assert.Equal(HttpStatusCode.OK, page.StatusCode);
        }

        await using RunningService again = new(folder.Path);
        await again.Start();
        await again.Prints("Pages: ");
        Assert.DoesNotMatch(BatchPage(), again.Printed);
    }

    [Fact]
    public async Task The_service_says_that_it_has_no_sign_in()
    {
        using TemporaryFolder folder = new();
        await using RunningService service = new(folder.Path);

        await service.Start();

        await service.Prints("no sign-in");
    }

    [GeneratedRegex(@"http://127\.0\.0\.1:\d+/batches/\S+", RegexOptions.None, Patience.Milliseconds)]
    private static partial Regex BatchPage();
}
