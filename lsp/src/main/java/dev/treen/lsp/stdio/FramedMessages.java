package dev.treen.lsp.stdio;

import com.google.gson.JsonParseException;
import com.google.gson.JsonSyntaxException;
import com.google.gson.stream.MalformedJsonException;
import java.io.EOFException;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.eclipse.lsp4j.jsonrpc.JsonRpcException;
import org.eclipse.lsp4j.jsonrpc.MessageConsumer;
import org.eclipse.lsp4j.jsonrpc.MessageIssueException;
import org.eclipse.lsp4j.jsonrpc.MessageProducer;
import org.eclipse.lsp4j.jsonrpc.json.MessageJsonHandler;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.jsonrpc.messages.Message;
import org.eclipse.lsp4j.jsonrpc.messages.MessageIssue;
import org.eclipse.lsp4j.jsonrpc.messages.RequestMessage;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseError;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseMessage;

/**
 * Reads messages and passes them on, one after another. A message that cannot be read, and a consumer that fails, cost
 * that one message: its sender is told where it waits for an answer, and the next message is read. A reader of the
 * library's own gives up some of these cases, see the tests.
 */
final class FramedMessages implements MessageProducer {

    private final FrameReader frames;
    private final MessageJsonHandler json;
    private final MessageConsumer answers;
    private final ServerLog log;

    FramedMessages(FrameReader frames, MessageJsonHandler json, MessageConsumer answers, ServerLog log) {
        this.frames = frames;
        this.json = json;
        this.answers = answers;
        this.log = log;
    }

    /** Returns when the stream ends. */
    @Override
    public void listen(MessageConsumer consumer) {
        try {
            while (true) {
                switch (frames.next()) {
                    case Frame.Body(String text) -> parsed(text).ifPresent(message -> deliver(message, consumer));
                    case Frame.Refused(Frame.Reason reason, String beginning) ->
                        refuse(Envelope.of(beginning), ResponseErrorCode.ParseError, reason.words());
                    case Frame.End() -> {
                        return;
                    }
                }
            }
        } catch (IOException closed) {
            // A pipe that breaks has ended like one that is closed.
            log.note("the client's stream broke off: " + closed.getMessage(), null);
        }
    }

    private Optional<Message> parsed(String text) {
        try {
            return Optional.ofNullable(json.parseMessage(text));
        } catch (MessageIssueException wrong) {
            refuse(Envelope.of(text), code(wrong.getIssues()), "cannot be read: " + reason(wrong.getIssues()));
        } catch (JsonParseException | JsonRpcException | IllegalStateException | NumberFormatException wrong) {
            refuse(Envelope.of(text), ResponseErrorCode.InvalidRequest, "cannot be read: " + wrong.getMessage());
        } catch (RuntimeException | StackOverflowError wrong) {
            refuse(Envelope.of(text), ResponseErrorCode.InvalidRequest, "cannot be read: " + wrong);
        }
        return Optional.empty();
    }

    private void deliver(Message message, MessageConsumer consumer) {
        try {
            consumer.consume(message);
        } catch (MessageIssueException wrong) {
            refuse(envelope(message), code(wrong.getIssues()), "is not complete: " + reason(wrong.getIssues()));
        } catch (Throwable fault) {
            // Even running out of memory or stack over one message is no reason to give up the others.
            log.note("a fault of Treen's own while it passed on a message", fault);
        }
    }

    private static Envelope envelope(Message message) {
        return message instanceof RequestMessage request
                ? new Envelope(Optional.of(request.getRawId()), request.getMethod(), false)
                : new Envelope(Optional.empty(), "", message instanceof ResponseMessage);
    }

    private void refuse(Envelope envelope, ResponseErrorCode code, String words) {
        String subject = envelope.method().isEmpty() ? "a message" : "the message " + shortened(envelope.method());
        String sentence = subject + " " + words;
        log.note(sentence, null);
        if (envelope.wantsAnswer()) {
            answer(envelope.id().orElseThrow(), new ResponseError(code, sentence, null));
        }
    }

    private void answer(Either<String, Number> id, ResponseError error) {
        ResponseMessage answer = new ResponseMessage();
        answer.setRawId(id);
        answer.setError(error);
        try {
            answers.consume(answer);
        } catch (RuntimeException unsent) {
            log.note("an answer could not be sent: " + unsent.getMessage(), null);
        }
    }

    /** The outline was sound, so what remains is mostly a value of the wrong kind; the grammar may be wrong all the same. */
    private static ResponseErrorCode code(List<MessageIssue> issues) {
        boolean grammar = issues.stream().map(MessageIssue::getCause).anyMatch(FramedMessages::isGrammar);
        return grammar ? ResponseErrorCode.ParseError : ResponseErrorCode.InvalidParams;
    }

    private static boolean isGrammar(Throwable cause) {
        return cause instanceof MalformedJsonException || cause instanceof EOFException
                || (cause instanceof JsonSyntaxException && cause.getCause() != null && isGrammar(cause.getCause()));
    }

    private static String reason(List<MessageIssue> issues) {
        return shortened(issues.stream().map(FramedMessages::reason).collect(Collectors.joining(" ")));
    }

    private static String reason(MessageIssue issue) {
        Exception cause = issue.getCause();
        return cause == null || cause.getMessage() == null ? issue.getText() : cause.getMessage();
    }

    /** A hostile name must not fill the log. */
    private static String shortened(String text) {
        return text.length() <= 200 ? text : text.substring(0, 200) + "…";
    }
}
