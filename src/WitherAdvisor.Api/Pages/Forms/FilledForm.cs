namespace WitherAdvisor.Api.Pages.Forms;

/// <summary>A form as it stands on the page: what is typed in it and what is wrong with that.</summary>
/// <param name="Typed">By field name, as typed; a missing one is empty.</param>
/// <param name="Problems">In the order of the page.</param>
public sealed record FilledForm(IReadOnlyDictionary<string, string> Typed, IReadOnlyList<FieldProblem> Problems)
{
    public string this[string field] => Typed.GetValueOrDefault(field, "");

    public FieldProblem? ProblemOf(string field) => Problems.FirstOrDefault(problem => problem.Field == field);
}
