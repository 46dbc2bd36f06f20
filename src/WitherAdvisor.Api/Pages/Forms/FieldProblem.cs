namespace WitherAdvisor.Api.Pages.Forms;

/// <summary>Something wrong with what was typed.</summary>
/// <param name="Field">Name of the field, which is also its id on the page.</param>
/// <param name="Label">What the field is called on the page.</param>
/// <param name="Text">What was given and what is allowed.</param>
/// <param name="Language">Of the text, where it is not that of the page: what the interface refuses it says in English.</param>
public sealed record FieldProblem(string Field, string Label, string Text, string? Language = null);
