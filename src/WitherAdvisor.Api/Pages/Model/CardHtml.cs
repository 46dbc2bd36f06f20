using Markdig;

namespace WitherAdvisor.Api.Pages.Model;

/// <summary>The card's Markdown as HTML.</summary>
internal static class CardHtml
{
    private static readonly MarkdownPipeline Pipeline =
        new MarkdownPipelineBuilder().UsePipeTables().DisableHtml().Build();

    public static string Of(string markdown) => Markdown.ToHtml(markdown, Pipeline);
}
