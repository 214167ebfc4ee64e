@echo off
rem Starts Runtrue on Windows. Builds it when there is no build yet; after a change to the sources run mvnw.cmd package.
rem   JAVA_HOME      which Java to use; otherwise the one on the PATH
rem   RUNTRUE_OPTS   options for Java, for example -Xmx8g
setlocal
set "HOME_DIR=%~dp0"
if "%HOME_DIR:~-1%"=="\" set "HOME_DIR=%HOME_DIR:~0,-1%"
set "APP=%HOME_DIR%\modules\cli\target\app"
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java.exe"
"%JAVA%" -version >nul 2>&1
if errorlevel 1 (
    echo runtrue: No Java found. Runtrue needs a Java Development Kit ^(JDK^) of version 17 or newer. 1>&2
    exit /b 1
)
if exist "%APP%\runtrue.jar" if exist "%APP%\lib" goto start
echo runtrue: there is no built program yet: building it ^(a minute or two; Maven fetches libraries^) ... 1>&2
if not exist "%HOME_DIR%\target" mkdir "%HOME_DIR%\target"
pushd "%HOME_DIR%"
call "%HOME_DIR%\mvnw.cmd" -B -ntp -pl modules/cli -am package -Dmaven.test.skip=true >"%HOME_DIR%\target\runtrue-build.log" 2>&1
if errorlevel 1 (
    popd
    type "%HOME_DIR%\target\runtrue-build.log" 1>&2
    echo runtrue: The build failed. The log above is in %HOME_DIR%\target\runtrue-build.log 1>&2
    exit /b 1
)
popd
:start
rem Java 23 and later warn of memory access that unmapping a file and a library need; see DEVELOPERS.md.
set "QUIET="
if defined JAVA_HOME findstr /r /c:"^JAVA_VERSION=.2[3-9]" "%JAVA_HOME%\release" >nul 2>&1 && set "QUIET=--sun-misc-unsafe-memory-access=allow"
"%JAVA%" %QUIET% -XX:+UseSerialGC -XX:-C1UpdateMethodData -XX:Tier4InvocationThreshold=300000 -XX:Tier4MinInvocationThreshold=100000 -XX:Tier4CompileThreshold=1500000 -XX:Tier4BackEdgeThreshold=40000000 %RUNTRUE_OPTS% "-Druntrue.home=%HOME_DIR%" -jar "%APP%\runtrue.jar" %*
exit /b %errorlevel%
