namespace WitherAdvisor.Api.Pages.Model;

/// <summary>Words over a group of rows.</summary>
public sealed record TornadoHeading(double Top, string Text);
