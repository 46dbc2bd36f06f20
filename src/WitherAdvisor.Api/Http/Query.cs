using System.Reflection;
using WitherAdvisor.Fields;
using WitherAdvisor.Fields.Json;

namespace WitherAdvisor.Api.Http;

/// <summary>The query of a request, held to the same rules as a body: no unknown name, none twice, no guessing at numbers.</summary>
internal sealed class Query<T>(T? value, ProblemResult? refusal)
    : Refusable<T>(value, refusal), IBindableFromHttpContext<Query<T>>
    where T : class
{
    public static ValueTask<Query<T>?> BindAsync(HttpContext context, ParameterInfo parameter) =>
        ValueTask.FromResult<Query<T>?>(Read(context.Request.Query));

    private static Query<T> Read(IQueryCollection query)
    {
        List<FieldError> twice = [.. query
            .Where(pair => pair.Value.Count > 1)
            .Select(pair => FieldError.Of(pair.Key, pair.Value.ToString(), "one value"))];
        if (twice.Count > 0)
        {
            return new(null, Problem.InvalidInput(twice));
        }

        ObjectShape shape = (ObjectShape)Shapes.Of(typeof(T));
        var fields = query.Select(pair => KeyValuePair.Create(pair.Key, pair.Value.ToString()));
        Refusable<T> read = InputReader.Read<T>(TextFields.ToJson(shape, fields));
        return read.Refusal is null ? new(read.Value, null) : new(null, read.Refusal);
    }
}
