package hullalmanac.ui.window;

import java.io.File;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiConsumer;
import net.bytebuddy.agent.ByteBuddyAgent;
import net.bytebuddy.agent.builder.AgentBuilder;
import net.bytebuddy.asm.Advice;
import net.bytebuddy.description.method.MethodDescription;
import net.bytebuddy.implementation.bytecode.assign.Assigner;
import net.bytebuddy.matcher.ElementMatcher;
import net.bytebuddy.matcher.ElementMatchers;

/**
 * Notes each call on the event thread that asks the system about a file, opens or changes one, or
 * goes to SQLite. The classes of Java and of the SQLite driver through which all such calls go are
 * made to tell, once for the whole process.
 */
final class CallsOnEventThread {
  /** Where the changed classes find who wants to know: they see no class but Java's own. */
  private static final String KEY = "hullalmanac.calls on the event thread";

  private static final List<String> SQLITE =
      List.of("org.sqlite.core.DB", "org.sqlite.core.NativeDB", "org.sqlite.core.SafeStmtPtr");

  private static boolean installed;

  private final List<Call> calls = Collections.synchronizedList(new ArrayList<>());
  private boolean noting;

  /**
   * A call.
   *
   * @param method its class and name
   * @param files what it was about, where that can be said
   * @param from the callers, nearest first
   */
  record Call(String method, List<String> files, List<StackTraceElement> from) {}

  CallsOnEventThread() throws IOException {
    install();
    BiConsumer<String, Object[]> note = this::note;
    System.getProperties().put(KEY, note);
  }

  /** What was called so far. */
  List<Call> calls() {
    synchronized (calls) {
      return List.copyOf(calls);
    }
  }

  void stop() {
    System.getProperties().remove(KEY);
  }

  /** Only ever on the event thread; what noting itself calls is not noted. */
  private void note(String method, Object[] about) {
    if (noting) {
      return;
    }
    noting = true;
    List<String> files = new ArrayList<>();
    for (Object o : about) {
      if (o instanceof Path || o instanceof File) {
        files.add(o.toString());
      } else if (o instanceof String name && method.startsWith("java.io.")) {
        files.add(name);
      }
    }
    StackTraceElement[] stack = new Throwable().getStackTrace();
    // This method and the changed class's own stand first.
    calls.add(
        new Call(method, files, List.of(stack).subList(Math.min(2, stack.length), stack.length)));
    noting = false;
  }

  private static synchronized void install() throws IOException {
    if (installed) {
      return;
    }
    new AgentBuilder.Default()
        .disableClassFormatChanges()
        .with(AgentBuilder.RedefinitionStrategy.RETRANSFORMATION)
        .with(AgentBuilder.InitializationStrategy.NoOp.INSTANCE)
        .with(AgentBuilder.TypeStrategy.Default.REDEFINE)
        .ignore(ElementMatchers.none())
        .type(ElementMatchers.namedOneOf(classes().toArray(String[]::new)))
        .transform(
            (builder, type, loader, module, domain) ->
                builder
                    .visit(Advice.to(Asked.class).on(telling(type.getName())))
                    .visit(Advice.to(Opened.class).on(opening(type.getName()))))
        .installOn(ByteBuddyAgent.install());
    installed = true;
  }

  /** The classes through which every file and every statement goes. */
  private static Set<String> classes() throws IOException {
    Set<String> names = new LinkedHashSet<>(SQLITE);
    Class<?> provider = FileSystems.getDefault().provider().getClass();
    for (Class<?> c = provider; c != Object.class; c = c.getSuperclass()) {
      names.add(c.getName());
    }
    Path file = Files.createTempFile("channel", ".tmp");
    try (FileChannel channel = FileChannel.open(file)) {
      names.add(channel.getClass().getName());
    }
    Files.delete(file);
    for (Class<?> c :
        List.of(
            File.class, FileInputStream.class, FileOutputStream.class, RandomAccessFile.class)) {
      names.add(c.getName());
    }
    return names;
  }

  private static ElementMatcher.Junction<MethodDescription> telling(String type) {
    ElementMatcher.Junction<MethodDescription> methods =
        ElementMatchers.<MethodDescription>isMethod()
            .and(ElementMatchers.not(ElementMatchers.isStatic()))
            .and(ElementMatchers.not(ElementMatchers.isNative()))
            .and(ElementMatchers.not(ElementMatchers.isAbstract()));
    if (SQLITE.contains(type)) {
      return methods;
    }
    if (type.equals(File.class.getName())) {
      return methods.and(
          ElementMatchers.namedOneOf(
              "canExecute",
              "canRead",
              "canWrite",
              "createNewFile",
              "delete",
              "exists",
              "getFreeSpace",
              "getTotalSpace",
              "isDirectory",
              "isFile",
              "isHidden",
              "lastModified",
              "length",
              "list",
              "mkdir",
              "renameTo",
              "setLastModified",
              "setReadOnly"));
    }
    if (type.startsWith("java.io.")) {
      return ElementMatchers.none();
    }
    boolean provider = !type.endsWith("FileChannelImpl");
    return methods
        .and(ElementMatchers.isPublic())
        .and(
            provider
                ? ElementMatchers.takesArgument(0, Path.class)
                : ElementMatchers.namedOneOf(
                    "force",
                    "lock",
                    "map",
                    "read",
                    "size",
                    "transferFrom",
                    "transferTo",
                    "truncate",
                    "tryLock",
                    "write"));
  }

  private static ElementMatcher.Junction<MethodDescription> opening(String type) {
    return type.startsWith("java.io.") && !type.equals(File.class.getName())
        ? ElementMatchers.<MethodDescription>isConstructor()
            .and(
                ElementMatchers.takesArgument(0, File.class)
                    .or(ElementMatchers.takesArgument(0, String.class)))
        : ElementMatchers.none();
  }

  /** Put at the head of methods; speaks of nothing but classes of Java's own. */
  private static final class Asked {
    private Asked() {}

    @Advice.OnMethodEnter
    @SuppressWarnings("unchecked")
    static void enter(
        @Advice.Origin("#t.#m") String method,
        @Advice.This(optional = true, typing = Assigner.Typing.DYNAMIC) Object self,
        @Advice.AllArguments Object[] arguments) {
      if (Thread.currentThread().getName().startsWith("AWT-EventQueue")) {
        Object told = System.getProperties().get("hullalmanac.calls on the event thread");
        if (told != null) {
          Object[] about = new Object[arguments.length + 1];
          about[0] = self;
          System.arraycopy(arguments, 0, about, 1, arguments.length);
          ((BiConsumer<String, Object[]>) told).accept(method, about);
        }
      }
    }
  }

  /** Put at the head of constructors that open a file. */
  private static final class Opened {
    private Opened() {}

    @Advice.OnMethodEnter
    @SuppressWarnings("unchecked")
    static void enter(
        @Advice.Origin("#t.#m") String method, @Advice.AllArguments Object[] arguments) {
      if (Thread.currentThread().getName().startsWith("AWT-EventQueue")) {
        Object told = System.getProperties().get("hullalmanac.calls on the event thread");
        if (told != null) {
          ((BiConsumer<String, Object[]>) told).accept(method, arguments);
        }
      }
    }
  }
}
