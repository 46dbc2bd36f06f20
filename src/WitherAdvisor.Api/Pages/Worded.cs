using Microsoft.AspNetCore.Components;
using WitherAdvisor.Words;

namespace WitherAdvisor.Api.Pages;

/// <summary>A component that speaks the language of whoever asks.</summary>
public abstract class Worded : ComponentBase
{
    /// <summary>Short, as it stands on every line.</summary>
    [Inject]
    public required Wordbook W { get; set; }

    /// <summary>A sentence with markup in it.</summary>
    protected MarkupString Html(string key, params ReadOnlySpan<(string Name, object Value)> values) => new(W.Html(key, values));
}
