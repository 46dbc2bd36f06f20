namespace WitherAdvisor.Api.Pages.Model;

/// <summary>The page of the model card.</summary>
internal static class ModelPageEndpoints
{
    public const string Address = "/model";

    public static IResult Show(HttpContext http, TimeProvider clock) =>
        PageAnswer.Of<ModelPage>(new { Page = PageAnswer.Context(http, clock) });
}
