using System.Reflection;
using WitherAdvisor.Fields;

namespace WitherAdvisor.Api.Http.Doors;

/// <summary>Refuses any query where a route declares none; where it declares one, <see cref="Query{T}"/> reads it as strictly.</summary>
internal static class QueryDoor
{
    public static RouteGroupBuilder RefuseUnknownQueries(this RouteGroupBuilder group) =>
        group.AddEndpointFilterFactory((route, next) => TakesQuery(route.MethodInfo)
            ? next
            : context => Refusal(context.HttpContext.Request.Query) is { } refusal
                ? ValueTask.FromResult<object?>(refusal)
                : next(context));

    private static bool TakesQuery(MethodInfo handler) => handler.GetParameters().Any(parameter =>
        parameter.ParameterType.IsGenericType && parameter.ParameterType.GetGenericTypeDefinition() == typeof(Query<>));

    private static ProblemResult? Refusal(IQueryCollection query) => query.Count == 0
        ? null
        : Problem.InvalidInput([.. query.Select(pair => FieldError.Of(
            pair.Key, $"\"{pair.Value}\"", "no query: this route takes none"))]);
}
