namespace WitherAdvisor.Api.Http;

/// <summary>Answers with the first refused argument's problem, so that handlers only ever see good ones.</summary>
internal static class RefusalFilter
{
    public static RouteGroupBuilder RefuseBadArguments(this RouteGroupBuilder group) =>
        group.AddEndpointFilter((context, next) =>
            context.Arguments.OfType<IRefusable>().FirstOrDefault(argument => argument.Refusal is not null) is { } refused
                ? ValueTask.FromResult<object?>(refused.Refusal)
                : next(context));
}
